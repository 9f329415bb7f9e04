// What a person must settle of a finding: words that sound like others, and a "no" that was not read as one.

import type { SeverityWord } from '../../../terms/index.ts';
import { hasTag, type Island } from '../../islands/island.ts';
import { type Role, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { deniedBehind } from '../negations/denied-behind.ts';
import { isInListWithOr } from '../negations/or-list.ts';
import { hasRole, type Item, pieceOf, type SitePhrase, wordsOf } from '../sites/item.ts';
import { sideAfter } from '../sites/said-side.ts';

/** The doubts of words that were taken for a side, a site or a finding that sounds like them. */
export const soundsLike = (phrases: readonly SitePhrase[], island: Island | null): readonly string[] => [
  ...phrases.flatMap(({ homophone }) =>
    homophone === null ? [] : [`"${homophone}" was taken for a side or a site that sounds like it.`],
  ),
  ...(island !== null && hasTag(island, 'homophone')
    ? ['A word was taken for a finding that sounds like it.']
    : []),
];

/** The last net under a missed negation: a "no" or "not" straight before a finding that is stated is asked about. */
export function hearsNo(items: readonly Item[], tokens: readonly Token[], i: number): readonly string[] {
  const piece = pieceOf(items[i - 1]);
  const isStraight =
    piece !== null && piece.role !== 'finding' && tagIn(piece, 'negation', 'negation') === 'before';
  // "No obvious deformed limbs" may deny, and "no, tender left knee" without its comma does not.
  const isNear = deniedBehind(items, tokens, i) === 'site';
  const isHeard = soundsLikeNo(items, tokens, i);
  return isStraight || isNear || isHeard ? ['Is this there, or not there?'] : [];
}

/** Words before which, and after which, a "know" is one: "you know, pain in the hip", "do not know". */
const KNOWING: ReadonlySet<string> = new Set(
  'you i we they he she to not me do does did could would'.split(' '),
);

/** "Know pain", "know obvious swelling": a recogniser wrote what sounds like a "no". */
function soundsLikeNo(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const item = items[i];
  if (item === undefined) return false;
  const from = wordsOf(item).from;
  const at = [from - 1, from - 2].find((one) => tokens[one]?.word === 'know');
  return at !== undefined && !KNOWING.has(tokens[at - 1]?.word ?? '');
}

/** "No stiff neck" denies, and "any lumps, no, stiff neck" without its commas does not. */
export const hearsBareSite = (
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  island: Island,
): readonly string[] =>
  hasTag(island, 'adj') && deniedBehind(items, tokens, i) === 'bare-site'
    ? ['Is this there, or not there?']
    : [];

/**
 * "No wounds, graze on the back", "no deformity, severe pain": the second of two goes on denying, or was found. `severity` is what
 * is said of it.
 */
export function hearsList(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  severity: SeverityWord | number | undefined,
): readonly string[] {
  const first = items.slice(0, i).findLastIndex((item) => hasRole(item, 'finding'));
  const before = pieceOf(items[first]);
  if (before === null || !isPaused(tokens, before) || isInListWithOr(items, i)) return [];
  if (!items.slice(first + 1, i).every((item) => hasRole(item, 'attribute'))) return [];
  // Of three or more the last is one of a list.
  const isSecond = tagIn(pieceOf(lastLoud(items, first)) ?? before, 'negation', 'negation') === 'before';
  const goesOn = items.slice(i + 1).some((item) => hasRole(item, 'finding'));
  if (!isSecond || goesOn) return [];
  const [next, place] = [items[i + 1], items.slice(i + 1).find(({ type }) => type === 'site')];
  const isLed = next !== undefined && UPON.has(tokens[wordsOf(next).from]?.word ?? '');
  const isPlaced = isLed && (place !== undefined || hasRole(next, 'side'));
  return isPlaced || severity === 'severe' ? ['Is this denied too, or is it there?'] : [];
}

const UPON: ReadonlySet<string> = new Set([
  'on',
  'over',
  'across',
  'behind',
  'above',
  'below',
  'under',
  'around',
]);

const lastLoud = (items: readonly Item[], i: number): Item | undefined =>
  items.slice(0, i).findLast((item) => !hasRole(item, 'small') && !hasRole(item, 'attribute'));

/** "Chest pain." "No, belly pain": a "no" that opens and pauses denies what is behind it, or puts right what was said. */
export function hearsPausedNo(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
): readonly string[] {
  const before = items
    .slice(0, i)
    .findLast((item) => item.type !== 'site' && !OF_PLACE.has(pieceOf(item)?.role ?? 'small'));
  const no = pieceOf(before);
  const opens = no !== null && (no.from === 0 || /end|ask/.test(tokens[no.from - 1]?.pause ?? ''));
  const isPausedNo = opens && tokens[no.to - 1]?.word === 'no' && isPaused(tokens, no);
  return isPausedNo ? ['Is this denied, or was something put right?'] : [];
}

const OF_PLACE: ReadonlySet<Role> = new Set(['small', 'attribute', 'site', 'side', 'part']);

/** A bare "left" straight before a finding that took no side from it is asked about. */
export function hearsSide(
  before: Item | undefined,
  tokens: readonly Token[],
  taken: boolean,
): readonly string[] {
  const piece = pieceOf(before);
  if (taken || piece === null || piece.role !== 'side' || isPaused(tokens, piece)) return [];
  const side = sideAfter(piece);
  return side === 'left' || side === 'right' ? [`Was "${side}" said as the side?`] : [];
}
