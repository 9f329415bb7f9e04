// "No swelling around the cut", "no bleeding from that wound": what is not there was looked for at a thing that is.

import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, pieceOf, wordsOf } from '../sites/item.ts';

/** True for a finding by its name with "the" or "that" before it, which words of place lead to in the breath of another finding. */
export function isLandmark(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null || isAdjective(items[i])) return false;
  let first = i;
  while (first > 0 && isColour(items[first - 1])) first--;
  const at = wordsOf(items[first] ?? { type: 'piece', piece }).from;
  const [where, the] = [tokens[at - 2], tokens[at - 1]];
  if (the === undefined || where === undefined || !DEFINITE.test(the.word) || !WHERE.test(where.word))
    return false;
  const breath = items.slice(0, first).findLastIndex((item) => isPaused(tokens, wordsOf(item))) + 1;
  // "No sign of the rash" denies the rash itself.
  return items.slice(breath, first).some((item) => hasRole(item, 'finding') || hasRole(item, 'unknown'));
}

const isColour = (item: Item | undefined): boolean => hasRole(item, 'attribute') || hasRole(item, 'side');

const DEFINITE = /^(the|that|this|his|her|their|its)$/;
const WHERE =
  /^(from|around|round|at|in|into|inside|within|under|underneath|below|beneath|above|over|on|near|behind|beside|by|along|through|past|beyond|of)$/;
