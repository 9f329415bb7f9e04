// A side that turns the site which was named to the other one: "no deformity to either thigh, though the left is swollen", "left hip
// fine, tender on the right".

import type { Side } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, phraseOf, pieceOf, wordsOf } from '../sites/item.ts';
import { type LooseSide, looseSide } from '../sites/loose-side.ts';
import { sideAfter } from '../sites/said-side.ts';
import { otherSide } from '../sites/side.ts';
import { startsWithPreposition } from '../sites/site-phrase.ts';

/** The side that turns the site at `site` for the finding at `i` after it, or null. */
export function turnedSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  if (site > i) return ownSide(items, tokens, i, site) ?? subjectSide(items, tokens, i, site, mind);
  if (site === i) return null;
  const at = items.slice(0, i).findLastIndex((item) => hasRole(item, 'side'));
  if (at <= site) return sideBehind(items, tokens, i, site);
  // "The right knee, not the left, is swollen."
  const no = pieceOf(items[at - 1]);
  if (no !== null && marked(no, 'negation', 'before')) return null;
  const one = pieceOf(items[at]);
  // "… and the left one's fine, no swelling": what is said of the one goes on.
  const isOne = one !== null && /^ones?$/.test(tokens[one.to - 1]?.word ?? '');
  const goesOn = (item: Item): boolean =>
    isPassed(item, tokens) ||
    (isOne && (hasRole(item, 'finding') || hasRole(item, 'answer') || hasRole(item, 'negation')));
  const straight = items.slice(at + 1, i).every(goesOn);
  const turned = straight ? looseSide(items, tokens, i, mind) : null;
  // "Right ankle and left hip are both sore": each keeps its side.
  return turned?.side === 'both' ? null : turned;
}

const isPassed = (item: Item, tokens: readonly Token[]): boolean =>
  hasRole(item, 'small') ||
  hasRole(item, 'attribute') ||
  isSmallItem(item, 'article') ||
  isAdverb(pieceOf(item), tokens);

// "The left one is numb and the right leg is fine": of what was numb the side before it tells, and only what it is comes later.
function subjectSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  const named = oneSideOf(items[site]);
  const at = items.slice(0, i).findLastIndex((item) => hasRole(item, 'side'));
  const side = pieceOf(items[at]);
  if (named === null || side === null || !items.slice(at + 1, i).every((item) => isPassed(item, tokens)))
    return null;
  if (!items.slice(at + 1, i).some((item) => isSmallItem(item, 'link'))) return null;
  return sideAfter(side) === otherSide(named) ? looseSide(items, tokens, i, mind) : null;
}

// "The left one's still numb".
const isAdverb = (piece: Piece | null, tokens: readonly Token[]): boolean =>
  piece !== null && piece.to - piece.from === 1 && ADVERB.test(tokens[piece.from]?.word ?? '');

const ADVERB = /^(still|only|just|now|then|otherwise)$/;

// "Left hip fine, tender on the right": of the left one everything was said before the pause.
function sideBehind(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
): LooseSide | null {
  const named = oneSideOf(items[site]);
  const next = sideNext(items, i, named);
  if (next === null) return null;
  const { at, piece, side } = next;
  if (named === null) return oneOfBoth(items, tokens, i, site, next);
  // "Unstable right knee, stable left": without its "on the" a side must close what is said.
  const closes = at === i + 1 && (at === items.length - 1 || isPaused(tokens, piece));
  // "Numb down the left arm, tingling in the right".
  const said = pieceOf(items[i]);
  const isNothing = said !== null && marked(said, 'nothing');
  const isLed =
    startsWithPreposition([piece], tokens) || (!isNothing && isSmallItem(items[at - 1], 'preposition'));
  if (!isLed && !closes) return null;
  if (side !== otherSide(named) || pausesIn(items.slice(i, at), tokens)) return null;
  const before = items.slice(site + 1, i);
  // "Unstable right knee stable left".
  const loud = items.slice(0, site).findLast((item) => !hasRole(item, 'small'));
  const isLedBy = hasRole(loud, 'finding');
  const isDone =
    isLedBy ||
    before.some((item) => hasRole(item, 'finding') || hasRole(item, 'csm') || isContrast(pieceOf(item)));
  if (!isDone && !pausesIn(items.slice(site, i), tokens)) return null;
  // "Cut on the right side" may be one side of the left thigh.
  const isAspect = tokens[piece.to - 1]?.word === 'side';
  return { side, piece, doubt: isAspect ? [wasSide(side)] : [] };
}

// "Both knees not swollen, but tender on the left": of the two it is the one.
function oneOfBoth(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  { at, piece, side }: NextSide,
): LooseSide | null {
  const sites = phraseOf(items[site])?.sites ?? [];
  const isBoth = sites.length > 0 && sites.every((one) => one.side === 'both');
  const isLed = startsWithPreposition([piece], tokens) || isSmallItem(items[at - 1], 'preposition');
  const isSaid = isBoth && isLed && !pausesIn(items.slice(i, at), tokens);
  return isSaid ? { side, piece, doubt: [] } : null;
}

/** Asks of "left hip tenderness on the right": no pause says that the other one is meant. */
export function hearsOtherSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  refs: readonly SiteRef[],
): readonly string[] {
  const [one] = refs;
  const next = sideNext(items, i, one?.side ?? null);
  if (next === null || !startsWithPreposition([next.piece], tokens)) return [];
  const isOther = refs.some((ref) => ref.side === otherSide(next.side));
  return isOther && !pausesIn(items.slice(i, next.at), tokens) ? [wasSide(next.side)] : [];
}

interface NextSide {
  readonly at: number;
  readonly piece: Piece;
  readonly side: 'left' | 'right';
}

// The left or the right that comes after the finding at `i`, with nothing but small words and attributes between.
function sideNext(items: readonly Item[], i: number, named: Side | null = null): NextSide | null {
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'small') && !hasRole(item, 'attribute'));
  const piece = pieceOf(items[at]);
  const said = piece?.role === 'side' ? sideAfter(piece) : null;
  // "Left hip tender, swelling on the other side".
  const side = said === 'mirror' ? otherSide(named) : said;
  return piece !== null && (side === 'left' || side === 'right') ? { at, piece, side } : null;
}

const pausesIn = (items: readonly Item[], tokens: readonly Token[]): boolean =>
  items.some((item) => isPaused(tokens, wordsOf(item)));

const wasSide = (side: Side): string => `Was "${side}" said as the side?`;

const isContrast = (piece: Piece | null): boolean => piece !== null && marked(piece, 'contrast');

// "Pain on the left, bruising on the right side of the ribs": the pain has a side of its own before the place that both are at.
function ownSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
): LooseSide | null {
  const named = oneSideOf(items[site]);
  const next = sideNext(items, i);
  if (named === null || next === null || next.at >= site || !isPaused(tokens, next.piece)) return null;
  const { side, piece } = next;
  return side === otherSide(named) ? { side, piece, doubt: [] } : null;
}

const oneSideOf = (item: Item | undefined): 'left' | 'right' | null => {
  const sides = (phraseOf(item)?.sites ?? []).map(({ side }) => side);
  const [side] = sides;
  return (side === 'left' || side === 'right') && sides.every((one) => one === side) ? side : null;
};
