// "No bleeding now | left knee swollen": a "now" between what was said of one place and what is said of the next goes on to it.

import { isSmall, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { startsWithPreposition } from '../sites/site-phrase.ts';
import { has } from './said.ts';

const SUBJECT: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

/** True where piece `k` opens the next place behind a "now", and `left` has its own place. */
export function opensBehindNow(
  left: readonly Piece[],
  pieces: readonly Piece[],
  k: number,
  tokens: readonly Token[],
): boolean {
  const [now, piece] = [pieces[k - 1], pieces[k]];
  if (now === undefined || piece === undefined || tokens[now.to - 1]?.word !== 'now') return false;
  if (now.to - now.from > 1 || !SUBJECT.has(piece.role) || startsWithPreposition([piece], tokens))
    return false;
  if (!has(left, 'finding') && !has(left, 'csm')) return false;
  const hasPlace = has(left, 'site') || left.some(({ from }) => tokens[from]?.word === 'there');
  const rest = pieces.slice(k);
  const end = rest.findIndex((one) => !SUBJECT.has(one.role) && !isSmall(one, 'article'));
  const [subject, said] = [rest.slice(0, Math.max(end, 0)), rest[end]];
  // "Pain now right foot and ankle": nothing is said of that place, so what stands before it may be.
  return (
    hasPlace &&
    subject.some(({ role }) => role === 'site') &&
    !subject.some((one) => isPaused(tokens, one)) &&
    said !== undefined &&
    !isSmall(said, 'join') &&
    !isSmall(said, 'preposition')
  );
}
