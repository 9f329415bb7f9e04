// Words that say that care was there before the responder was: "on when we arrived", "before we got here", "this morning".

import { readingOf } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { hasRole, type Item, pieceOf, wordsOf } from '../sites/item.ts';
import { type Talk, timeOf } from '../talk.ts';

/** The words that put the care at item `i` before now; null where none do, or where its time was said. */
export function earlierIn(talk: Talk, items: readonly Item[], i: number): Span | null {
  const [care] = items.slice(i, i + 1);
  if (care === undefined || timeOf(talk, wordsOf(care)) !== undefined) return null;
  const next = items.findIndex((item, k) => k > i && hasRole(item, 'care'));
  const before = items.slice(0, i).some((item) => hasRole(item, 'care')) ? [] : items.slice(0, i);
  const after = items.slice(i + 1, next < 0 ? items.length : next);
  const found = [...after, ...before].find((item) => {
    const piece = pieceOf(item);
    return piece !== null && readingOf(piece, 'care.earlier') !== null;
  });
  if (found === undefined) return null;
  const { from, to } = wordsOf(found);
  // "On when we arrived".
  return { from: talk.tokens[from - 1]?.word === 'on' ? from - 1 : from, to };
}
