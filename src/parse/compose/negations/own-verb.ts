// Where a "not" or a "none of" ends that denies what one verb says: "the probe will not read, hands cold", "none of the toes hurt, heel sore".

import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';

/** The token past the pause that ends the verb phrase of the "not" at item `i`; null where its reach is not cut off so. */
export function endOfOwnVerb(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const not = pieceOf(items[i]);
  if (not === null || tokens[not.to - 1]?.word !== 'not' || isPaused(tokens, not)) return null;
  const after = items.slice(i + 1);
  if (isParted(after, tokens)) return wordsOf(after[0] as Item).to;
  const verb = after.slice(0, after.findIndex((item) => isPaused(tokens, wordsOf(item))) + 1);
  const last = verb.at(-1);
  if (last === undefined || !verb.every(isPlainWord)) return null;
  const isPronoun = /^(this|that|these|those)$/.test(tokens[wordsOf(last).to - 1]?.word ?? '');
  return !isPronoun && OPEN_ENDED.some((kind) => isSmallItem(last, kind)) ? null : wordsOf(last).to;
}

// "The probe won't read hands too cold": the verb has had its say where a place opens with how it is.
function isParted([verb, site, ...rest]: readonly Item[], tokens: readonly Token[]): boolean {
  if (verb === undefined || site?.type !== 'site' || !hasRole(verb, 'unknown')) return false;
  if (isPaused(tokens, wordsOf(verb)) || isPaused(tokens, site.phrase) || site.phrase.led) return false;
  const next = rest.find((item) => !hasRole(item, 'small'));
  return isAdjective(next) || hasRole(next, 'csm');
}

/** The token past the pause after what a "none of" at item `i` denies: "none of the fingers are numb, tender at the wrist". */
export function endOfEach(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const said = items.findIndex((item, k) => k > i && (hasRole(item, 'finding') || hasRole(item, 'csm')));
  // "None tender bruise on the right".
  const [one, next] = [items[said], items[said + 1]];
  if (one !== undefined && isAdjective(one) && hasRole(next, 'finding') && !isAdjective(next))
    return wordsOf(one).to;
  const last = said < 0 ? undefined : items.slice(said).find((item) => isPaused(tokens, wordsOf(item)));
  return last === undefined ? null : wordsOf(last).to;
}

const isPlainWord = (item: Item): boolean => hasRole(item, 'small') || hasRole(item, 'unknown');

// "Does not have a … swelling": what the word leads to is still to come.
const OPEN_ENDED = ['article', 'preposition', 'join', 'or', 'link', 'owner', 'mine'] as const;
