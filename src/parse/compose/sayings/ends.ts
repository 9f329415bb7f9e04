// Where a part of a breath may end and the next one begin.

import { isPaired, isSite, type Site } from '../../../terms/index.ts';
import { isSmall, marked, type Piece, type Role, readingOf, tagIn } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import { sideAfter } from '../sites/said-side.ts';
import { startsWithPreposition } from '../sites/site-phrase.ts';

/** True for an "and", and for a "but" that turns to something else. */
export const isJoin = (piece: Piece): boolean =>
  (isSmall(piece, 'join') && !isSmall(piece, 'or')) || marked(piece, 'contrast');

// Behind these a part may end without a pause.
const CLOSED: ReadonlySet<Role> = new Set([
  'site',
  'finding',
  'csm',
  'state',
  'care',
  'attribute',
  'unknown',
  'time',
  'history',
  'talk',
]);

/** True where a part may end without a pause between these two: "on the left knee" is one place, "on the left spine" is not. */
export function mayEnd(before: Piece, next: Piece, tokens: readonly Token[]): boolean {
  if (before.role !== 'side' && before.role !== 'part') return CLOSED.has(before.role);
  // "Halfway down" stands behind its place alone.
  if (before.role === 'part' && readingOf(before, 'sides.part-before') === null) return true;
  const isLed = before.role === 'side' && startsWithPreposition([before], tokens);
  if (next.role === 'side' || next.role === 'part') return isLed;
  if (before.role === 'side' && readingOf(before, 'sides.side-before') === null) return true;
  // "Right grip strong": a bare side opens what follows it.
  if (before.role === 'side' && !isLed) return false;
  const sites = next.role === 'site' ? (tagIn(next, 'sites', 'site') ?? '').split('+').filter(isSite) : [];
  if (before.role === 'part') return sites.length === 0;
  // Nobody has left ears.
  const isOne = sideAfter(before) === 'left' || sideAfter(before) === 'right';
  const areMany = isLed && isOne && marked(next, 'plural') && !sites.some((site) => MANY.has(site));
  return areMany || !sites.some(isPaired);
}

const MANY: ReadonlySet<Site> = new Set(['ribs', 'fingers', 'toes']);

/** True for a size, and for a part or a side as it stands behind its place: they end what was said before. */
export const isLate = (piece: Piece): boolean =>
  (piece.role === 'attribute' && (piece.islands[0]?.slots.length ?? 0) > 0) ||
  (piece.role === 'part' && readingOf(piece, 'sides.part-before') === null) ||
  (piece.role === 'side' && readingOf(piece, 'sides.side-before') === null);

/** True where a piece may open a part without a pause: what happened goes on ("where he fell"), unless somebody is named anew. */
export const mayRunOn = (piece: Piece, tokens: readonly Token[]): boolean =>
  piece.role !== 'history' || /^(he|she|they|patient)$/.test(tokens[piece.from]?.word ?? '');
