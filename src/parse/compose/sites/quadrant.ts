// With the abdomen in mind "right upper" and "left lower" are its quadrants, where no other site follows them.

import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import type { SitePhrase } from './item.ts';
import { partsOf, sideBefore } from './said-side.ts';
import { leads, startsWithPreposition } from './site-phrase.ts';
import { plainSite } from './site-ref.ts';

/** The quadrant that the pieces at `i` and after it name, or null. */
export function quadrantAt(pieces: readonly Piece[], tokens: readonly Token[], i: number): SitePhrase | null {
  const [first, second, next] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (first === undefined || second === undefined || next?.role === 'site' || isPaused(tokens, first))
    return null;
  // "Left upper" and "upper left".
  const [side, part] = first.role === 'part' ? [second, first] : [first, second];
  if (side.role !== 'side' || part.role !== 'part') return null;
  const named = sideBefore(side);
  const [half] = partsOf(part);
  if ((named !== 'left' && named !== 'right') || (half !== 'upper' && half !== 'lower')) return null;
  const ref: SiteRef = plainSite(half === 'upper' ? 'upper-quadrant' : 'lower-quadrant', named);
  return {
    from: first.from,
    to: second.to,
    sites: [ref],
    led: startsWithPreposition([first], tokens) || leads(pieces[i - 1], tokens),
    sideLast: false,
    mirrored: false,
    doubtful: false,
    mine: false,
    owned: false,
    denied: false,
    homophone: null,
  };
}
