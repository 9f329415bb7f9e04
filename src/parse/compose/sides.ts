// Gives each site its side: the spoken one, the list's, the limb's in mind, or none; and says how it was known.

import { isPaired, type Known, type Side } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { limbOf } from './limb.ts';
import type { SitePhrase } from './site-phrase.ts';
import { otherSide } from './talk.ts';

/** The sites of a phrase with their sides, in the light of the sites in mind. */
export function withSides(phrase: SitePhrase, mind: readonly SiteRef[]): readonly SiteRef[] {
  return phrase.sites.map((ref) => {
    if (phrase.mirrored) return mirror(ref, mind);
    if (ref.side !== null || !isPaired(ref.site)) return ref;
    return carried(ref, mind);
  });
}

function mirror(ref: SiteRef, mind: readonly SiteRef[]): SiteRef {
  const side = otherSide(mind.find(({ side }) => side === 'left' || side === 'right')?.side ?? null);
  return { ...ref, side, sideKnown: side === null ? null : 'carried' };
}

function carried(ref: SiteRef, mind: readonly SiteRef[]): SiteRef {
  const limb = limbOf(ref.site);
  const from = mind.find(
    ({ site, side }) =>
      side !== null && side !== 'midline' && (site === ref.site || (limb !== null && limbOf(site) === limb)),
  );
  return from === undefined ? ref : withSide(ref, from.side, 'carried');
}

const withSide = (ref: SiteRef, side: Side | null, sideKnown: Known): SiteRef => ({
  ...ref,
  side,
  sideKnown,
});

/** A list of sites shares a side that was said once: "left hip, thigh and knee", "hip and knee on the left". */
export function shareSides(refs: readonly SiteRef[]): readonly SiteRef[] {
  return unlike(shared(refs));
}

// "Shin and calf" name one site twice.
const unlike = (refs: readonly SiteRef[]): readonly SiteRef[] =>
  refs.filter(
    (ref, i) =>
      refs.findIndex(
        (other) => JSON.stringify({ ...other, sideKnown: 0 }) === JSON.stringify({ ...ref, sideKnown: 0 }),
      ) === i,
  );

function shared(refs: readonly SiteRef[]): readonly SiteRef[] {
  const out: SiteRef[] = [];
  for (const ref of refs) {
    const giver = out.at(-1);
    const lacks = isPaired(ref.site) && (ref.side === null || ref.sideKnown === 'carried');
    out.push(
      lacks && giver?.side && giver.sideKnown !== 'inferred' ? withSide(ref, giver.side, 'carried') : ref,
    );
  }
  const last = out.at(-1);
  if (last?.side == null || last.sideKnown !== 'spoken') return out;
  return out.map((ref) =>
    isPaired(ref.site) && ref.side === null ? withSide(ref, last.side, 'carried') : ref,
  );
}
