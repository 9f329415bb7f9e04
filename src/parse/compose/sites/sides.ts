// Gives each site its side: the spoken one, the list's, the limb's in mind, or none; and says how it was known.

import { isPaired, type Known, type Side } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { unique } from '../../unique.ts';
import type { SitePhrase } from './item.ts';
import { limbOf } from './limb.ts';

/** The sites of a list of phrases, with the sides that they say, share and carry. */
export const sitesOf = (phrases: readonly SitePhrase[], mind: readonly SiteRef[]): readonly SiteRef[] => {
  const told = toldAtTheEnd(phrases);
  return shareSides(
    phrases.flatMap((phrase, i) =>
      withSides(phrase, told ? [] : mind).map((ref) => ({
        ref,
        fixed: phrase.mirrored || isNamedAnew(phrase, phrases[i - 1]),
      })),
    ),
  );
};

// "My right wrist and a bit of my hip": a place of another limb with an owner of its own is on a side that nobody said.
function isNamedAnew({ owned, sites }: SitePhrase, before: SitePhrase | undefined): boolean {
  const [one, other] = [sites[0], before?.sites[0]];
  return owned && one !== undefined && other !== undefined && limbOf(one.site) !== limbOf(other.site);
}

// "Elbow, forearm and wrist on the right": the side that closes the list is the list's, and not the one in mind.
function toldAtTheEnd(phrases: readonly SitePhrase[]): boolean {
  const [last, ...others] = phrases.toReversed();
  const bare = others.every(
    ({ sites, mirrored }) =>
      !mirrored && sites.every(({ side, sideKnown }) => side === null || sideKnown === 'inferred'),
  );
  return last?.sideLast === true && others.length > 0 && bare;
}

/** The sites of a phrase with their sides, in the light of the sites in mind. */
export function withSides(phrase: SitePhrase, mind: readonly SiteRef[]): readonly SiteRef[] {
  return phrase.sites.map((ref) => {
    // "The other arm" has its side already, or none that is known.
    if (phrase.mirrored || ref.side !== null || !isPaired(ref.site)) return ref;
    return carried(ref, mind);
  });
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
function shareSides(
  named: readonly { readonly ref: SiteRef; readonly fixed: boolean }[],
): readonly SiteRef[] {
  const out: SiteRef[] = [];
  for (const { ref, fixed } of named) {
    const giver = out.at(-1);
    // "The other knee" has the side that the first has not.
    const lacks = !fixed && isPaired(ref.site) && (ref.side === null || ref.sideKnown === 'carried');
    out.push(
      lacks && giver?.side && giver.sideKnown !== 'inferred' ? withSide(ref, giver.side, 'carried') : ref,
    );
  }
  const last = out.at(-1);
  if (last?.side == null || last.sideKnown !== 'spoken') return unlike(out);
  return unlike(
    out.map((ref) => (isPaired(ref.site) && ref.side === null ? withSide(ref, last.side, 'carried') : ref)),
  );
}

// "Shin and calf" name one site twice.
const unlike = (refs: readonly SiteRef[]): readonly SiteRef[] =>
  unique(refs, (ref) => ({ ...ref, sideKnown: null }));
