// A side said apart from any site: "tender on the left", "right is fine". A bare "right" that opens a sentence may be mere talk.

import { isPaired, type Side } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, phrasesIn, pieceOf, wordsOf } from './item.ts';
import { isMirror, sideAfter } from './said-side.ts';
import { oneSide, otherSide } from './side.ts';
import { startsWithPreposition } from './site-phrase.ts';

export interface LooseSide {
  readonly side: Side;
  readonly piece: Piece;
  /** what a person must settle of it, in plain words */
  readonly doubt: readonly string[];
}

/** The side said of item `i` apart from any site, or null. */
export function looseSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  for (const k of candidates(items, tokens, i, mind)) {
    const piece = pieceOf(items[k]);
    if (piece === null) continue;
    const read = sideAt(items, tokens, k, piece, mind);
    if (read !== null) return read;
    // A "right" that calls for attention leaves the next to decide; any other that is in doubt leaves the side open.
    if (!isPaused(tokens, piece)) return null;
  }
  return null;
}

const isSide = (item: Item | undefined): boolean => {
  const piece = pieceOf(item);
  return piece !== null && (piece.role === 'side' || isMirror(piece));
};

const says = (item: Item | undefined): boolean =>
  hasRole(item, 'finding') || hasRole(item, 'csm') || hasRole(item, 'state') || isSmallItem(item, 'link');

// So many items away a side is another thing's; it also keeps a breathless talk's cost in step with its length.
const FAR = 24;

/** The places of the sides that may be meant at `i`, likely first. */
function candidates(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  mind: readonly SiteRef[],
): readonly number[] {
  const pauses = (k: number): number =>
    items.slice(Math.min(k, i), Math.max(k, i)).filter((item) => isPaused(tokens, wordsOf(item))).length;
  // "Left swollen, right normal": where a side opens, each says what comes after it; "swollen left, normal right" the other
  // way round.
  const first = items.findIndex((item) => isSide(item) || hasRole(item, 'finding') || hasRole(item, 'csm'));
  const sideFirst = isSide(items[first]);
  const rank = (k: number): number => {
    const near = Math.abs(k - i);
    const led = k > i && startsWithPreposition([pieceOf(items[k]) as Piece], tokens) && near <= 2;
    return pauses(k) * 100 + (k > i && sideFirst && !led ? 50 : 0) + near - (k > i ? 0.5 : 0);
  };
  const from = Math.max(0, i - FAR);
  return items
    .slice(from, i + FAR)
    .flatMap((item, at) => {
      const k = from + at;
      return k !== i && isSide(item) && mayBe(items, tokens, i, k, sideFirst, mind) ? [k] : [];
    })
    .sort((a, b) => rank(a) - rank(b));
}

function mayBe(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  k: number,
  sideFirst: boolean,
  mind: readonly SiteRef[],
): boolean {
  // A side past the next site is that site's; past words that nobody knows it may be anything's ("stable, lungs clear both
  // sides").
  if (k > i && items.slice(i + 1, k).some((one) => one.type === 'site' || hasRole(one, 'unknown')))
    return false;
  // "The bruise is not on the left, it is on the right"; in "nothing on the right" the word that denies is what is said.
  const no = pieceOf(items[k - 1]);
  if (no !== null && k > i + 1 && (marked(no, 'negation', 'before') || marked(no, 'answer', 'no')))
    return false;
  // "Abdomen is hard, big pain left": what was said of a place that has no sides has had its say at the pause.
  if (k > i && isWholeSaid(items, tokens, i, k, mind)) return false;
  // "Weaker than the left" is said of the other side.
  if (isSmallItem(items[k - 1], 'before')) return false;
  const piece = pieceOf(items[k]);
  if (k < i && piece !== null && isDirection(tokens, piece)) return false;
  if (k < i && hasHadItsSay(items, tokens, i, k)) return false;
  if (k < i || piece === null || isPaused(tokens, piece)) return true;
  // "Swollen, left is fine": after a pause a side that something is said of is that one's.
  const parted = items.slice(i, k).some((item) => isPaused(tokens, wordsOf(item)));
  const owns = says(items[k + 1]) || hasRole(items[k + 1], 'negation') || hasRole(items[k + 1], 'attribute');
  return !(owns && (parted || sideFirst));
}

// "Ribs tender on the left, shoulders okay": the side is that of the ribs, and the shoulders come past the pause.
function hasHadItsSay(items: readonly Item[], tokens: readonly Token[], i: number, k: number): boolean {
  if (!items.slice(0, k).some((item) => item.type === 'site') || !items.slice(0, k).some(says)) return false;
  const site = items.findLastIndex((item, at) => at < i && item.type === 'site');
  const isParted = (to: number): boolean =>
    items.slice(k, to).some((item) => isPaused(tokens, wordsOf(item)));
  if (site > k) return isParted(site);
  // "Ribs tender on the left, cut on the forehead".
  const end = items.findIndex((item, at) => at >= i && isPaused(tokens, wordsOf(item)));
  const breath = items.slice(i + 1, end < 0 ? items.length : end + 1);
  return isParted(i) && phrasesIn(breath).some(({ led }) => led);
}

const TURNED: ReadonlySet<string> = new Set([
  'off',
  'bent',
  'deviated',
  'shifted',
  'pushed',
  'leaning',
  'turned',
  'rotated',
  'pointing',
]);

// "Nose is off to the left, some blood": where something went is no side of what is said next.
const isDirection = (tokens: readonly Token[], { from, to }: Piece): boolean => {
  const at = tokens.findIndex(({ word }, k) => k >= from - 1 && k < to && word === 'to');
  return at > 0 && [tokens[at - 1], tokens[at - 2]].some((one) => TURNED.has(one?.word ?? ''));
};

function isWholeSaid(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  k: number,
  mind: readonly SiteRef[],
): boolean {
  const item = items[i];
  const place = phrasesIn(items.slice(0, i)).at(-1)?.sites ?? mind;
  if (item === undefined || place.length === 0 || place.some(({ site }) => isPaired(site))) return false;
  return isPaused(tokens, wordsOf(item)) && items.slice(i + 1, k).some((one) => hasRole(one, 'finding'));
}

function sideAt(
  items: readonly Item[],
  tokens: readonly Token[],
  k: number,
  piece: Piece,
  mind: readonly SiteRef[],
): LooseSide | null {
  const side = sideAfter(piece);
  if (side === null || marked(piece, 'homophone')) return null;
  const inMind = oneSide(mind);
  if (side === 'mirror') {
    const named = phrasesIn(items.slice(0, k)).flatMap(({ sites }) => sites);
    const other = otherSide(oneSide(named.toReversed()) ?? inMind);
    return other === null ? null : { side: other, piece, doubt: [] };
  }
  const sure: LooseSide = { side, piece, doubt: [] };
  if (!piece.weak) return sure;
  // A bare "right" or "left" is a side only where something is said of it at once, and not where it ends a sentence's call.
  const next = items[k + 1];
  const paused = isPaused(tokens, piece);
  const opens = k === 0;
  if (paused && opens) return null;
  if (next?.type === 'piece' && isSmall(next.piece, 'link')) return sure;
  if (hasRole(next, 'csm') && !paused) return sure;
  // "Left facial droop": a finding that has its own place can only be on a side of it.
  if (next?.type === 'piece' && next.piece.role === 'finding' && marked(next.piece, 'at') && !paused)
    return sure;
  if (!opens) return sure;
  // "Knees: left swollen": both are in mind, so a side that opens is one of them.
  const both = mind.some((ref) => ref.side === 'both' || (ref.side === null && isPaired(ref.site)));
  if (both && !paused && (says(next) || hasRole(next, 'negation') || hasRole(next, 'unknown'))) return sure;
  if (inMind !== null && otherSide(side) === inMind)
    return { side, piece, doubt: [`Was "${side}" said as the side?`] };
  return side === 'left' && inMind !== null ? sure : null;
}
