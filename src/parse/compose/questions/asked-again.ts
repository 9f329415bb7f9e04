// "And your back?", "and on the right?", "and here?": a question that is asked again of another place.

import type { Side, Site } from '../../../terms/index.ts';
import type { AskedOne } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import { unique } from '../../unique.ts';
import { endsOnSide, toEnd } from '../csm/limb-ends.ts';
import { hasRole, type Item, pieceOf, wordsOf } from '../sites/item.ts';
import { sideAfter } from '../sites/said-side.ts';
import { oneSide, otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import { plainSite } from '../sites/site-ref.ts';
import type { Talk } from '../talk.ts';

/** "And your back?" asks again what was asked of the site before; null where nothing was. */
export function askedAgain(talk: Talk, items: readonly Item[]): AskedOne | null {
  const before = talk.context.askedBefore;
  // "Did you bang your head?" has a verb of its own.
  if (items.some((item) => hasRole(item, 'unknown'))) return null;
  const sites = items.some((item) => item.type === 'site') ? talk.context.sites : [];
  // "And that?", at the same limb.
  if (before !== null && sites.length === 0 && isPointing(talk, items) && isOfPlace(before)) return before;
  if (sites.length > 0 && before?.about === 'findings') return { ...before, sites, either: false };
  const ends = sites.flatMap((ref) => toEnd(ref, null));
  // "Up here on the thigh?" asks of no foot.
  const isEnd = sites.every(({ site }) => !SEGMENTS.has(site));
  if (ends.length > 0 && isEnd && before?.about === 'csm') return { ...before, ends };
  const pieces = items.flatMap((item) => pieceOf(item) ?? []);
  const side = sideIn(pieces)?.side ?? (pieces.some(isOther) ? otherThan(before) : null);
  const which = items.some((item) => asksWhich(talk, item));
  return side === null || sites.length > 0 || which ? null : askedOnSide(before, side);
}

const SEGMENTS: ReadonlySet<Site> = new Set([
  'thigh',
  'knee',
  'lower-leg',
  'hip',
  'shoulder',
  'upper-arm',
  'elbow',
  'forearm',
]);

const POINTING = /^(this|that|here|there)$/;
const BESIDE_IT = /^(now|and|one|how|about|what)$/;

const isOfPlace = (before: AskedOne): boolean =>
  before.about === 'csm' || (before.about === 'findings' && before.sites.length > 0);

const isPointing = ({ tokens }: Talk, items: readonly Item[]): boolean => {
  const words = items.map(wordsOf).flatMap(({ from, to }) => tokens.slice(from, to).map(({ word }) => word));
  return (
    words.some((word) => POINTING.test(word)) &&
    words.every((word) => POINTING.test(word) || BESIDE_IT.test(word))
  );
};

// "And the other side?" is asked of the other one of the side that was asked after.
const isOther = (piece: Piece): boolean => piece.role === 'side' && sideAfter(piece) === 'mirror';

const otherThan = (before: AskedOne | null): Side | null =>
  before?.about === 'findings'
    ? otherSide(oneSide(before.sites))
    : before?.about === 'csm'
      ? otherSide(oneSide(before.ends))
      : null;

// "Left or right?" asks nothing again: it wants the side of what was said. "Or the right?" does.
const asksWhich = ({ tokens }: Talk, item: Item): boolean => {
  const { from, to } = wordsOf(item);
  return tokens.slice(from + 1, to).some(({ word }) => word === 'or');
};

// "And on the right?"
function askedOnSide(before: AskedOne | null, side: Side): AskedOne | null {
  if (
    before?.about === 'findings' &&
    before.sites.length > 0 &&
    before.sites.every((ref) => ref.side !== null)
  )
    return { ...before, either: false, sites: unique(before.sites.map(({ site }) => plainSite(site, side))) };
  if (before?.about === 'csm' && before.ends.every((end) => end.side !== null))
    return { ...before, ends: endsOnSide(before.ends, side) };
  return null;
}
