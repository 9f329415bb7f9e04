// The sites that a finding may belong to by where they stand: the last before it, the next that it leads to, any after it.

import { isLikely, marked, type Role, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isContrast, isSmallItem, phraseOf, pieceOf, wordsOf } from './item.ts';
import { type Attaches, ownsWhatFollows, pauseAfterItem } from './site-group.ts';

/** The index of the last site before item `i`, or null. */
export function lastSite(items: readonly Item[], i: number): number | null {
  const at = items.slice(0, i).findLastIndex((item) => item.type === 'site');
  return at < 0 ? null : at;
}

const PASSED: ReadonlySet<Role> = new Set([
  'attribute',
  'figure',
  'negation',
  'answer',
  'vital',
  'part',
  'talk',
  'small',
]);

/** True for "up to the knee", "down to the wrist": how far something goes, and not where it is. */
export function isExtent(items: readonly Item[], tokens: readonly Token[], site: number): boolean {
  const phrase = phraseOf(items[site]);
  if (phrase === null) return false;
  const words = tokens.slice(Math.max(0, phrase.from - 3), phrase.to).map(({ word }) => word);
  if (/\b(up|down) (to|past)\b|\bas far as\b/.test(words.join(' '))) return true;
  // "Can lift the arm above his head".
  if (/\b(above|over) (his|her|their|my) head$/.test(words.join(' '))) return true;
  // "Numb from the elbow down".
  return (
    words.includes('from') && /^(down|up|downwards|upwards|onwards)$/.test(tokens[phrase.to]?.word ?? '')
  );
}

/** The site that the finding at `i` leads to, or null: only what belongs to the list of findings may stand between the two. */
export function nextSite(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  attaches: Attaches,
): number | null {
  if (hasItsPart(items, tokens, i) || pointsBack(items, tokens, i)) return null;
  let denied = false;
  for (let k = i + 1; k < items.length; k++) {
    const item = items[k];
    if (item === undefined) return null;
    // "Swelling not of the ankle but of the foot".
    if (item.type === 'site' && denied) {
      denied = false;
      continue;
    }
    if (isToldAnew(items, tokens, k)) return null;
    denied = denied ? hasRole(item, 'small') : isDenial(item);
    if (item.type === 'site') {
      if (isFromIt(items, tokens, i, k)) return null;
      const paused = pauseAfterItem(items, tokens, k - 1) !== '';
      // "No cuts or bruises, groin's sore": past a pause a place that something is said of is that one's.
      if (paused && !item.phrase.led && ownsWhatFollows(items, tokens, k, says)) return null;
      return paused && !item.phrase.led && k - 1 > i ? null : k;
    }
    if (isNothingAnew(items, tokens, i, k)) return null;
    // "It's stable, no pain, and the only thing there is a graze over the right hip": it leads to its own place.
    if (attaches(item) && isToldThere(items, tokens, k)) return null;
    // "No deformity small graze at the sacrum": what is there leads to its own place.
    if (attaches(item) && isDeniedName(items, i) && isOneMore(items, k)) return null;
    if (attaches(item)) continue;
    if (!PASSED.has(item.piece.role) || isSmallItem(item, 'before')) return null;
  }
  return null;
}

// "No bruising on it, ankle fine", "he won't move it, elbow fine": of what was named before.
function pointsBack(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  // "Put it back in right foot warm".
  const { from, to } = wordsOf(items[i] as Item);
  if (hasRole(items[i], 'care') && tokens.slice(from, to).some(({ word }) => word === 'it')) return true;
  const at = wordsOf(items[i] as Item).to;
  const [last, next, after] = [at - 1, at, at + 1].map((k) => tokens[k]?.word ?? '');
  return (
    /^(it|them)$/.test(last ?? '') ||
    /^(it|them)$/.test(next ?? '') ||
    (/^(on|in|to|over|around|from|of)$/.test(next ?? '') && /^(it|them)$/.test(after ?? ''))
  );
}

// "The rash is fading and she says her throat is better": what somebody says next has its own place.
const isToldAnew = (items: readonly Item[], tokens: readonly Token[], k: number): boolean => {
  const piece = pieceOf(items[k]);
  return (
    piece !== null &&
    isSmallItem(items[k - 1], 'join') &&
    marked(piece, 'negation', 'stop') &&
    PERSON.test(tokens[piece.from]?.word ?? '')
  );
};

const PERSON = /^(he|she|they|patient|i|we)$/;

// "There is a graze", "the only thing is a cut".
const isToldThere = (items: readonly Item[], tokens: readonly Token[], k: number): boolean =>
  isSmallItem(items[k - 1], 'article') &&
  !isSmallItem(items[k - 1], 'owner') &&
  /^(is|there)$/.test(tokens[wordsOf(items[k - 1] as Item).from - 1]?.word ?? '') &&
  tokens
    .slice(Math.max(0, wordsOf(items[k - 1] as Item).from - 4), wordsOf(items[k - 1] as Item).from)
    .some(({ word }) => word === 'only');

const isDeniedName = (items: readonly Item[], i: number): boolean => {
  const before = pieceOf(items[i - 1]);
  return before !== null && before.role !== 'finding' && marked(before, 'negation', 'before');
};

// "A graze", "one cut", "small bruise": it begins anew where nothing denies it.
const isOneMore = (items: readonly Item[], k: number): boolean =>
  (hasRole(items[k - 1], 'attribute') ||
    hasRole(items[k - 1], 'figure') ||
    (isSmallItem(items[k - 1], 'article') && !isSmallItem(items[k - 1], 'owner'))) &&
  !isDeniedName(items, k - 1) &&
  !isSmallItem(items[k - 2], 'or');

// "Swollen over the outside, tender at the tip of the fibula": with a part of its own before the pause it is of the place in mind.
function hasItsPart(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const rest = items.slice(i);
  const end = rest.findIndex((item) => isPaused(tokens, wordsOf(item)));
  const part = pieceOf(rest[end]);
  if (end < 1 || part?.role !== 'part' || !rest.slice(1, end).every((item) => hasRole(item, 'small')))
    return false;
  return readingOf(part, 'sides.part-after') !== null && hasRole(rest[end + 1], 'finding');
}

// "No boggy bits, nothing from the ears", "some blisters nothing on the right palm": a "nothing" after a pause, or that leads to a
// place, begins a statement of its own.
const isNothingAnew = (items: readonly Item[], tokens: readonly Token[], i: number, k: number): boolean => {
  const piece = pieceOf(items[k]);
  if (piece?.role !== 'finding' || !marked(piece, 'nothing')) return false;
  const place = phraseOf(items.slice(k + 1).find((item) => !hasRole(item, 'small')));
  const isLed = place?.led === true && !isDeniedName(items, i);
  return isLed || pauseAfterItem(items, tokens, k - 1) !== '';
};

const RUNS: readonly string[] = ['bleeding', 'fluid', 'abnormality'];

// "No lumps, no blood from the ears": only what runs comes from a place, and the lumps are elsewhere.
function isFromIt(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  const [said, phrase] = [pieceOf(items[i]), phraseOf(items[site])];
  const words = tokens.slice(Math.max(0, (phrase?.from ?? 0) - 2), phrase?.to).map(({ word }) => word);
  const between = items.slice(i + 1, site).some(deniesAnew);
  if (said?.role !== 'finding' || !words.includes('from') || !between) return false;
  return !RUNS.some((finding) => marked(said, 'finding', finding));
}

// A "no" between two things denied may stand as an answer would.
const deniesAnew = (item: Item): boolean => {
  const piece = pieceOf(item);
  return (piece?.role === 'negation' || piece?.role === 'answer') && marked(piece, 'negation', 'before');
};

const isDenial = (item: Item): boolean => {
  const piece = pieceOf(item);
  return piece?.role === 'negation' && marked(piece, 'negation', 'before');
};

/** The next site after item `i` that is not another thing's, whatever stands between; or null. */
export function anySite(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  attaches: Attaches,
  hasMind: boolean,
): number | null {
  if (hasItsPart(items, tokens, i) || (hasMind && pointsBack(items, tokens, i))) return null;
  let turned = false;
  for (let k = i + 1; k < items.length; k++) {
    const item = items[k];
    if (isNothingAnew(items, tokens, i, k)) return null;
    if (item?.type === 'site' && isFromIt(items, tokens, i, k)) return null;
    // "Grips strong both sides, right thumb has a cut": what says something of its own takes in nothing before a pause.
    if (item?.type === 'site')
      return ownsWhatFollows(items, tokens, k, says) && pauseAfterItem(items, tokens, k - 1) !== ''
        ? null
        : k;
    // "No steps, no tenderness, small graze over the shoulder blade": what is there has its own place.
    if (isToldAnew(items, tokens, k)) return null;
    if (hasMind && item !== undefined && attaches(item) && isDeniedName(items, i) && isOneMore(items, k))
      return null;
    // "Collar on, tingling in both hands": the hands are the tingling's.
    if (item !== undefined && hasRole(item, 'finding') && !attaches(item)) return null;
    // "Weak because of the thumb" is not said of the thumb.
    if (isSmallItem(items[k], 'before')) return null;
    // "I see no bleeding but his jeans are soaked on the thigh" is not said of the thigh.
    turned = turned || (item !== undefined && isContrast(item));
    // "No new injuries, old scar left knee": what is called normal goes no further than its own words.
    if ((turned || isFree(items, i)) && hasRole(item, 'unknown')) return null;
  }
  return null;
}

function isFree(items: readonly Item[], i: number): boolean {
  const piece = pieceOf(items[i]);
  const before = items.slice(0, i).findLast((item) => !hasRole(item, 'attribute'));
  if (piece?.role !== 'finding' || !marked(piece, 'finding', 'abnormality')) return false;
  return isLikely(piece, 'present', 'false') || (before !== undefined && deniesAnew(before));
}

/** True for what says something of a site. */
export const says: Attaches = (item) => hasRole(item, 'finding') || hasRole(item, 'csm');
