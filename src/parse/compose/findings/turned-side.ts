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
  if (site > i) return ownSide(items, tokens, i, site);
  if (site === i) return null;
  const at = items.slice(0, i).findLastIndex((item) => hasRole(item, 'side'));
  if (at <= site) return sideBehind(items, tokens, i, site);
  const straight = items
    .slice(at + 1, i)
    .every((item) => hasRole(item, 'small') || isSmallItem(item, 'article'));
  const turned = straight ? looseSide(items, tokens, i, mind) : null;
  // "Right ankle and left hip are both sore": each keeps its side.
  return turned?.side === 'both' ? null : turned;
}

// "Left hip fine, tender on the right": of the left one everything was said before the pause.
function sideBehind(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
): LooseSide | null {
  const named = oneSideOf(items[site]);
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'small') && !hasRole(item, 'attribute'));
  const piece = pieceOf(items[at]);
  if (named === null || piece?.role !== 'side') return null;
  // "Unstable right knee, stable left": without its "on the" a side must close what is said.
  const closes = at === i + 1 && (at === items.length - 1 || isPaused(tokens, piece));
  if (!startsWithPreposition([piece], tokens) && !closes) return null;
  if (
    sideAfter(piece) !== otherSide(named) ||
    items.slice(i, at).some((item) => isPaused(tokens, wordsOf(item)))
  )
    return null;
  const before = items.slice(site + 1, i);
  const isDone = before.some(
    (item) => hasRole(item, 'finding') || hasRole(item, 'csm') || isContrast(pieceOf(item)),
  );
  if (!isDone && !items.slice(site, i).some((item) => isPaused(tokens, wordsOf(item)))) return null;
  // "Cut on the right side" may be one side of the left thigh.
  const isAspect = tokens[piece.to - 1]?.word === 'side';
  const side = sideAfter(piece) as Side;
  return { side, piece, doubt: isAspect ? [`Was "${side}" said as the side?`] : [] };
}

/** Asks of "left hip tenderness on the right": no pause says that the other one is meant. */
export function hearsOtherSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  refs: readonly SiteRef[],
): readonly string[] {
  const here = pieceOf(items[i]);
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'small') && !hasRole(item, 'attribute'));
  const piece = pieceOf(items[at]);
  if (here === null || piece?.role !== 'side' || !startsWithPreposition([piece], tokens)) return [];
  const side = sideAfter(piece);
  const isParted = items.slice(i, at).some((item) => isPaused(tokens, wordsOf(item)));
  const isOther = (side === 'left' || side === 'right') && refs.some((ref) => ref.side === otherSide(side));
  return isOther && !isParted ? [`Was "${side}" said as the side?`] : [];
}

const isContrast = (piece: Piece | null): boolean => piece !== null && marked(piece, 'contrast');

// "Pain on the left, bruising on the right side of the ribs": the pain has a side of its own before the place that both are at.
function ownSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
): LooseSide | null {
  const named = oneSideOf(items[site]);
  const at = items.findIndex((item, k) => k > i && !hasRole(item, 'small') && !hasRole(item, 'attribute'));
  const piece = pieceOf(items[at]);
  if (named === null || at >= site || piece?.role !== 'side' || !isPaused(tokens, piece)) return null;
  const side = sideAfter(piece);
  return side === otherSide(named) ? { side: side as Side, piece, doubt: [] } : null;
}

const oneSideOf = (item: Item | undefined): 'left' | 'right' | null => {
  const sides = (phraseOf(item)?.sites ?? []).map(({ side }) => side);
  const [side] = sides;
  return (side === 'left' || side === 'right') && sides.every((one) => one === side) ? side : null;
};
