// Whether one finding is stated, denied or only possible; words that deny by themselves ("soft") are turned by a "not".

import { hasTag, type Island, tagOf } from '../../islands/island.ts';
import { isSmall, marked, type Role, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { deniedBehind } from '../negations/denied-behind.ts';
import type { Polarity, Reach } from '../negations/reach.ts';
import { hasRole, type Item, pieceOf, wordsOf } from '../sites/item.ts';
import { isLandmark } from './landmark.ts';

/** True for an adjective that a bare "no" does not deny, since no thing follows that it is said of. */
export const isBeyondNo = (
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  island: Island,
): boolean => {
  if (!hasTag(island, 'adj')) return false;
  const behind = deniedBehind(items, tokens, i);
  return behind !== 'thing' && behind !== 'bare-site';
};

/** The polarity of the finding at item `i`, whose reading is `island`. */
export function polarityAt(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  island: Island,
  reach: Reach,
): Polarity {
  if (tagOf(island, 'present') !== 'false') {
    // "No, you can't, it won't bend": what says "not" itself is denied no second time.
    const cannot = tokens.slice(island.from + 1, island.to).some(({ word }) => word === 'not');
    if (cannot && UNABLE.some((one) => hasTag(island, 'finding', one))) return 'stated';
    const polarity = reach.polarity(island.from, isBeyondNo(items, tokens, i, island));
    if (polarity === 'negated' && isLandmark(items, tokens, i)) return 'stated';
    if (polarity === 'negated')
      return isWeakened(items, tokens, i) || isOnCondition(items, tokens, i) ? 'possible' : polarity;
    return polarity === 'stated' && isAnswered(items, i) ? 'possible' : polarity;
  }
  // "Soft" and "stable" say that something is absent; only a "not" straight before them turns that round.
  for (let k = i - 1; k >= 0; k--) {
    const before = pieceOf(items[k]);
    if (before === null || isPaused(tokens, before)) return 'stated';
    if (tagIn(before, 'negation', 'negation') === 'before') return 'negated';
    if (before.role !== 'attribute' && !isSmall(before, 'word')) return 'stated';
  }
  return 'stated';
}

const UNABLE: readonly string[] = ['limited-motion', 'paralysis', 'weakness', 'numbness'];

// "No pain until I press", "no pain unless he lifts it": it is there, in the words that follow; "no pain at rest" leaves the rest
// open. Neither denies it of the place.
function isOnCondition(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  for (const [k, item] of items.entries()) {
    if (k < i) continue;
    const words = wordsOf(item);
    if (k > i) {
      const { from } = words;
      const [first, second] = [tokens[from]?.word ?? '', tokens[from + 1]?.word ?? ''];
      if (UNTIL.has(first) || (first === 'at' && second === 'rest')) return true;
      if (item.type !== 'site' && !hasRole(item, 'side') && !hasRole(item, 'small')) return false;
    }
    if (isPaused(tokens, words)) return false;
    // What is supposed is a clause of its own.
    if (k === items.length - 1) return UNTIL.has(tokens[words.to]?.word ?? '');
  }
  return false;
}

const UNTIL: ReadonlySet<string> = new Set(['until', 'till', 'unless']);

const MUCH: ReadonlySet<string> = new Set(['much', 'lot', 'badly', 'heavily']);

// "Not bleeding much", "does not hurt a lot": some of it may be there.
function isWeakened(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const here = pieceOf(items[i]);
  if (here === null || isPaused(tokens, here)) return false;
  for (const item of items.slice(i + 1)) {
    const piece = pieceOf(item);
    if (piece === null || (piece.role !== 'small' && piece.role !== 'attribute')) return false;
    if (tokens.slice(piece.from, piece.to).some(({ word }) => MUCH.has(word))) return true;
    if (isPaused(tokens, piece)) return false;
  }
  return false;
}

// "Left shoulder deformity no": a "no" that denies nothing after it may answer what was asked in so many words.
function isAnswered(items: readonly Item[], i: number): boolean {
  const [no, next] = [pieceOf(items[i + 1]), items[i + 2]];
  if (no === null || !marked(no, 'plain')) return false;
  if (next === undefined) return true;
  return next.type !== 'site' && !GOES_ON.has(next.piece.role);
}

const GOES_ON: ReadonlySet<Role> = new Set([
  'finding',
  'attribute',
  'side',
  'part',
  'csm',
  'history',
  'care',
  'vital',
  'unknown',
  'figure',
  'small',
  'answer',
]);
