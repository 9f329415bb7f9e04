// Which place a finding belongs to: the last before it, or the one that it leads to.

import { isLikely } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import {
  beginsAnew,
  type Choice,
  endsGroup,
  isAdjacent,
  isNextOnes,
  isNo,
  isParted,
  isWithin,
} from './begins-anew.ts';
import {
  hasRole,
  type Item,
  isContrast,
  isSmallItem,
  phraseOf,
  pieceOf,
  type SitePhrase,
  wordsOf,
} from './item.ts';
import { type Attaches, LEADING, ownsWhatFollows, pauseAfterItem } from './site-group.ts';

/** The item of its place; null where it is that in mind. */
export function choose({
  items,
  tokens,
  i,
  before,
  after,
  used,
  findingFirst,
  attaches,
}: Choice): number | null {
  const led =
    after !== null &&
    (phraseOf(items[after])?.led === true ||
      leadsItself(tokens, phraseOf(items[after])) ||
      leadsStraight(items, tokens, i, after));
  if (after !== null && isDoneTo(items, tokens, i, after)) return after;
  if (before !== null && after !== null && isNextOnes({ items, tokens, i, after, attaches })) return before;
  // "Forearm's swollen and still bleeding wrist not tender": place after place, each with what is said of it.
  if (
    before !== null &&
    after !== null &&
    !findingFirst &&
    !led &&
    deniesOfIt(items, tokens, after, attaches)
  )
    if (isOneBreath(items, tokens, before, i)) return before;
  if (before !== null && after !== null && beginsAnew({ items, tokens, i, before, after, used, attaches }))
    return after;
  if (before !== null && !used.has(before) && !items.slice(before + 1, i).some(attaches)) {
    // "The left arm has bruising at the elbow": the narrower place that it leads to is the one.
    const straight = led || (after !== null && tellsQuadrant(items, tokens, i, before, after, attaches));
    if (
      straight &&
      isWithin(items[after ?? -1], items[before]) &&
      !items.slice(i + 1, after ?? i).some(attaches)
    )
      return after;
    // A heading with a pause after it, or after what was said of it, yields to a site that is led to: "right leg, swelling
    // over the knee", "left forearm bleeding, tourniquet on the left upper arm".
    const heading = items.slice(before, i).some((_, k) => pauseAfterItem(items, tokens, before + k) !== '');
    // "Both eyes open, no bleeding from the nose": a denial begins anew, and leads to its own site.
    const denied = items.slice(before + 1, i).some(isNo);
    // "Right hip is high and there's swelling in the groin".
    const anew = items
      .slice(before + 1, i)
      .some((item) => isSmallItem(item, 'exists') || isThere(item, tokens));
    // "Back no tenderness, graze at the sacrum": past a pause the place is the next finding's.
    const isOthers = denied && !heading && !anew && isParted(items, tokens, i, after ?? i, attaches);
    return led && (heading || denied || anew) && !isOthers ? after : before;
  }
  // "Right hip swollen and tender, deformity of the right thigh": a pause ends what is said of the hip.
  if (led && before !== null && after !== null && endsGroup(items, tokens, i, attaches)) return before;
  if (led || before === null) return after;
  if (after !== null && findingFirst && isAdjacent(items, tokens, i, after)) return after;
  if (after !== null && isAttributive(items, tokens, i, after)) return after;
  return before;
}

// "Left arm's in a sling and I've splinted the left wrist": what somebody did was done to the place straight after it.
function isDoneTo(items: readonly Item[], tokens: readonly Token[], i: number, after: number): boolean {
  const [piece, before] = [pieceOf(items[i]), items[i - 1]];
  if (piece?.role !== 'care' || before === undefined || !isAdjacent(items, tokens, i, after)) return false;
  const isDeed = tokens.slice(piece.from, piece.to).some(({ word }) => /(ed|ing)$|^(put|bound)$/.test(word));
  const isDoer = (from: number): boolean => DOER.test(tokens[from]?.word ?? '');
  return isDeed && (isDoer(piece.from) || (isDoer(wordsOf(before).from) && hasRole(before, 'small')));
}

const DOER = /^(i|we|have|he|she|they|then|just)$/;

const isOneBreath = (items: readonly Item[], tokens: readonly Token[], from: number, to: number): boolean =>
  items
    .slice(from, to)
    .every((item, k) => pauseAfterItem(items, tokens, from + k) === '' && !isContrast(item));

/** True for "wrist not tender", "knee no swelling": the place has a denial of its own. */
export function deniesOfIt(
  items: readonly Item[],
  tokens: readonly Token[],
  site: number,
  attaches: Attaches,
): boolean {
  const [no, said] = [items[site + 1], items[site + 2]];
  const isUnpaused =
    pauseAfterItem(items, tokens, site) === '' && pauseAfterItem(items, tokens, site + 1) === '';
  return isUnpaused && no !== undefined && isNo(no) && said !== undefined && attaches(said);
}

// "Behind either ear", "below the knee": the word that leads to the place is its own.
const leadsItself = (tokens: readonly Token[], phrase: SitePhrase | null): boolean =>
  phrase !== null && /^(behind|below|above|under)$/.test(tokens[phrase.from]?.word ?? '');

// "Abdomen tender right lower quadrant" leads to the quadrant by standing straight before it.
function tellsQuadrant(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  before: number,
  after: number,
  attaches: Attaches,
): boolean {
  const piece = pieceOf(items[i]);
  const isBelly = phraseOf(items[before])?.sites.every(({ site }) => site === 'abdomen') === true;
  if (!isBelly || piece === null || isLikely(piece, 'present', 'false')) return false;
  return isAdjacent(items, tokens, i, after) && !ownsWhatFollows(items, tokens, after, attaches);
}

// "Tourniquet on the left upper arm": the phrase took the preposition in, and leads to the site straight after it.
function leadsStraight(items: readonly Item[], tokens: readonly Token[], i: number, after: number): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null || after !== i + 1 || isPaused(tokens, piece)) return false;
  const words = tokens.slice(piece.from, piece.to).map(({ word }) => word);
  // "Dressing on the" forehead.
  const last = /^(the|his|her|a|an)$/.test(words.at(-1) ?? '') ? words.at(-2) : words.at(-1);
  return words.length > 1 && LEADING.has(last ?? '');
}

// "Pressing on the breastbone causes pain in the ribs", too.
const isThere = (item: Item, tokens: readonly Token[]): boolean =>
  /^(there|causes|gives|produces|reproduces|brings)$/.test(tokens[wordsOf(item).from]?.word ?? '');

// "Swollen right knee": an adjective straight before a site, and not what an "is" says of the site before.
function isAttributive(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  const [item, piece] = [items[i], pieceOf(items[i])];
  if (item === undefined || piece === null || site !== i + 1) return false;
  if (!isLikely(piece, 'adj') || isLikely(piece, 'predicate')) return false;
  return !isPaused(tokens, wordsOf(item)) && !isSmallItem(items[i - 1], 'link');
}
