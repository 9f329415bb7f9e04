// Where a "not" or a "none of" ends that denies what one verb says: "the probe will not read, hands cold", "none of the toes hurt, heel sore".

import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';

/** The token past the pause that ends the verb phrase of the "not" at item `i`; null where its reach is not cut off so. */
export function endOfOwnVerb(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const not = pieceOf(items[i]);
  if (not === null || isPaused(tokens, not)) return null;
  const after = items.slice(i + 1);
  const isBare = tokens[not.to - 1]?.word === 'not';
  const parted = isBare || SEEN.test(tokens[not.to - 1]?.word ?? '') ? partedAt(after, tokens) : null;
  if (parted !== null || !isBare) return parted;
  const verb = after.slice(0, after.findIndex((item) => isPaused(tokens, wordsOf(item))) + 1);
  const last = verb.at(-1);
  if (last === undefined || !verb.every(isPlainWord)) return null;
  const isPronoun = /^(this|that|these|those)$/.test(tokens[wordsOf(last).to - 1]?.word ?? '');
  return !isPronoun && OPEN_ENDED.some((kind) => isSmallItem(last, kind)) ? null : wordsOf(last).to;
}

// "Did not see the tree".
const SEEN = /^(see|feel|find|hear|notice|have|get)$/;

// "The probe won't read hands too cold", "he didn't see the tree right knee sore": the verb has had its say where a place opens with
// how it is. Gives the token past the verb's words.
function partedAt(after: readonly Item[], tokens: readonly Token[]): number | null {
  const at = after.findIndex(({ type }) => type === 'site');
  const [site, verb] = [after[at], after.slice(0, Math.max(at, 0))];
  const last = verb.at(-1);
  if (site?.type !== 'site' || last === undefined || site.phrase.led || isPaused(tokens, site.phrase))
    return null;
  if (!verb.every((item) => (isPlainWord(item) || hasRole(item, 'mood')) && !isPaused(tokens, wordsOf(item))))
    return null;
  if (!verb.some((item) => hasRole(item, 'unknown')) || holdsOn(verb, tokens)) return null;
  const next = after.slice(at + 1).find((item) => !hasRole(item, 'small'));
  return isAdjective(next) || hasRole(next, 'csm') ? wordsOf(last).to : null;
}

// "Does not believe that the wrist is broken", "doesn't want the knee touched": what follows is what the verb is of.
const holdsOn = (verb: readonly Item[], tokens: readonly Token[]): boolean => {
  const words = tokens.slice(wordsOf(verb[0] as Item).from, wordsOf(verb.at(-1) as Item).to);
  const isOfSaying = verb.length === 1 && OF_SAYING.test(words[0]?.word ?? '');
  return isOfSaying || /^(that|if|whether|how|why|with|when)$/.test(words.at(-1)?.word ?? '');
};

const OF_SAYING = /^(believe|reckon|suppose|agree|worried|certain|convinced|remember|recall)$/;

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
