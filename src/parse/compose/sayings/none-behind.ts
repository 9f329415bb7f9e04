// "A blister on the left heel | right foot none": a "none" behind a place of its own denies nothing at the place before it.

import { type Piece, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';

/** True where the next pieces name another place and say "none" of it, and nothing else up to a pause or the end. */
export function opensNone(left: readonly Piece[], next: readonly Piece[], tokens: readonly Token[]): boolean {
  const [side, site, none, after] = next;
  if (side?.role !== 'side' || site?.role !== 'site' || none === undefined || isPaused(tokens, site))
    return false;
  if (none.to - none.from > 1 || tokens[none.from]?.word !== 'none') return false;
  if (after !== undefined && !isPaused(tokens, none)) return false;
  const last = left.findLast(({ role }) => role === 'site');
  const isLed = /^(in|on|over|of|to|at|across|around|from|near)$/.test(tokens[side.from]?.word ?? '');
  // "Swelling of the left ankle right ankle none" is turned to the other side where it stands.
  return !isLed && last !== undefined && tagIn(last, 'sites', 'site') !== tagIn(site, 'sites', 'site');
}
