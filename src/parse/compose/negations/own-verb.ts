// Where a "not" or a "none of" ends that denies what one verb says: "the probe will not read, hands cold", "none of the toes hurt, heel sore".

import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';

/** The token past the pause that ends the verb phrase of the "not" at item `i`; null where its reach is not cut off so. */
export function endOfOwnVerb(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const not = pieceOf(items[i]);
  if (not === null || tokens[not.to - 1]?.word !== 'not' || isPaused(tokens, not)) return null;
  const after = items.slice(i + 1);
  const verb = after.slice(0, after.findIndex((item) => isPaused(tokens, wordsOf(item))) + 1);
  const last = verb.at(-1);
  if (last === undefined || !verb.every(isPlainWord)) return null;
  const isPronoun = /^(this|that|these|those)$/.test(tokens[wordsOf(last).to - 1]?.word ?? '');
  return !isPronoun && OPEN_ENDED.some((kind) => isSmallItem(last, kind)) ? null : wordsOf(last).to;
}

/** The token past the pause after what a "none of" at item `i` denies: "none of the fingers are numb, tender at the wrist". */
export function endOfEach(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const said = items.findIndex((item, k) => k > i && (hasRole(item, 'finding') || hasRole(item, 'csm')));
  const last = said < 0 ? undefined : items.slice(said).find((item) => isPaused(tokens, wordsOf(item)));
  return last === undefined ? null : wordsOf(last).to;
}

const isPlainWord = (item: Item): boolean => hasRole(item, 'small') || hasRole(item, 'unknown');

// "Does not have a … swelling": what the word leads to is still to come.
const OPEN_ENDED = ['article', 'preposition', 'join', 'or', 'link', 'owner', 'mine'] as const;
