// Whether a clause says that care was ended: "released the tourniquet on the right arm", "collar off".

import { marked, type Role } from '../../pieces/piece.ts';
import { isPaused, type Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, pieceOf, wordsOf } from '../sites/item.ts';

const PASSED: ReadonlySet<Role> = new Set(['small', 'side', 'part', 'time', 'figure', 'negation']);

/** True where the care at item `i` was taken off, let go or stopped. */
export const isRemoved = (items: readonly Item[], tokens: readonly Token[], i: number): boolean =>
  endsBefore(items, tokens, i) || endsAfter(items, tokens, i);

/** True for "spine board not used", "collar wasn't needed", "pressure isn't working": no care given, in words after its name. */
export function isNotUsed(tokens: readonly Token[], { to }: Span): boolean {
  if (tokens[to - 1]?.pause !== '') return false;
  const words = tokens
    .slice(to, to + 4)
    .map(({ word }) => word)
    .join(' ');
  return NOT_USED.test(words) || FAILS.test(words);
}

const NOT_USED =
  /^((is|was|are|were|has|have|had) )?not (been )?(used|needed|required|applied|put|placed|given|available|possible|done|tolerated|fitted|necessary|started|on|indicated)\b/;

// "Direct pressure isn't working": what fails is told in words, and is not given anew.
const FAILS = /^(is|was|are|were|does|did) not (really |quite )?(working|work|helping|help)\b/;

function endsBefore(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieceOf(items[k]);
    if (piece === null || isPaused(tokens, piece)) return false;
    if (marked(piece, 'removal', 'before')) return true;
    if (!PASSED.has(piece.role)) return false;
  }
  return false;
}

function endsAfter(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  for (let k = i + 1; k < items.length; k++) {
    const [item, last] = [items[k], items[k - 1]];
    if (item === undefined || last === undefined || isPaused(tokens, wordsOf(last))) return false;
    const piece = pieceOf(item);
    if (piece !== null && marked(piece, 'removal', 'after')) return true;
    if (piece !== null && !PASSED.has(piece.role)) return false;
  }
  return false;
}
