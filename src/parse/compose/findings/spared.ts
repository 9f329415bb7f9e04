// What an exception leaves out of what is called normal: "all four quadrants soft except the left lower", "both knees fine, not the left".

import { isPaired, type Side, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import { type Item, isException, phrasesIn, pieceOf } from '../sites/item.ts';
import { partsOf, sideAfter } from '../sites/said-side.ts';
import { otherSide } from '../sites/side.ts';
import type { FoundFinding } from './found-finding.ts';

/** The findings without the places that a side, or a quadrant, after "except" leaves out: how it is there nobody said. */
export function withoutSpared(
  items: readonly Item[],
  found: readonly FoundFinding[],
): readonly FoundFinding[] {
  const at = items.findIndex(isException);
  const except = pieceOf(items[at]);
  if (except === null) return found;
  const spared = phrasesIn(items.slice(at + 1)).flatMap(({ sites }) => sites);
  if (spared.length > 0)
    return spared.length === 1 ? withoutSite(found, except, spared[0] as SiteRef) : found;
  const rest = items.slice(at + 1).flatMap((item) => pieceOf(item) ?? []);
  const side = rest
    .map((piece) => (piece.role === 'side' ? sideAfter(piece) : null))
    .find((one) => one !== null);
  const [part] = rest.flatMap((piece) => (piece.role === 'part' ? partsOf(piece) : []));
  if ((side !== 'left' && side !== 'right') || rest.some(({ role }) => role === 'finding')) return found;
  return found.flatMap((one) => {
    if (one.present || one.polarity !== 'stated' || one.piece.to > except.from) return [one];
    const refs = one.refs.flatMap((ref) => (isMeant(ref.site, part) ? without(ref, side) : [ref]));
    return refs.length === 0 ? [] : [{ ...one, refs }];
  });
}

// "Except the left lower" is the quadrant's name where the belly is in mind.
const withoutSite = (
  found: readonly FoundFinding[],
  except: Piece,
  { site, side }: SiteRef,
): readonly FoundFinding[] =>
  found.flatMap((one) => {
    if (one.present || one.polarity !== 'stated' || one.piece.to > except.from || side === null) return [one];
    const refs = one.refs.flatMap((ref) => (ref.site === site ? without(ref, side) : [ref]));
    return refs.length === 0 ? [] : [{ ...one, refs }];
  });

const isMeant = (site: Site, part: string | undefined): boolean =>
  part === undefined ? isPaired(site) : site === `${part}-quadrant`;

function without(ref: SiteRef, side: Side): readonly SiteRef[] {
  if (ref.side === side || ref.side === null) return [];
  return ref.side === 'both' ? [{ ...ref, side: otherSide(side), sideKnown: 'inferred' }] : [ref];
}
