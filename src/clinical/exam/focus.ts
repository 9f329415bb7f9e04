// The focused examination of a hurt limb: the site, the joint above and below, and the limb's end.

import { ASPECTS, SITES, type Site } from '../../terms/index.ts';
import type { Chart, Rule } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { type Place, placeText, SELF_AND_HOLDERS, takesIn } from '../place.ts';
import { sidesOf } from '../side.ts';
import { COMMON_PRACTICE } from '../source.ts';
import { csmAt } from './limb-ends.ts';

interface Neighbours {
  readonly above: Site;
  readonly below: Site;
  readonly end: 'hand' | 'foot';
}

/** Common practice: the joint above, the joint below, the end of the limb. A joint's neighbours are the next joints. */
export const NEIGHBOURS: Readonly<Partial<Record<Site, Neighbours>>> = {
  clavicle: { above: 'neck', below: 'shoulder', end: 'hand' },
  shoulder: { above: 'clavicle', below: 'elbow', end: 'hand' },
  'upper-arm': { above: 'shoulder', below: 'elbow', end: 'hand' },
  elbow: { above: 'shoulder', below: 'wrist', end: 'hand' },
  forearm: { above: 'elbow', below: 'wrist', end: 'hand' },
  wrist: { above: 'elbow', below: 'hand', end: 'hand' },
  hand: { above: 'wrist', below: 'fingers', end: 'hand' },
  hip: { above: 'pelvis', below: 'knee', end: 'foot' },
  thigh: { above: 'hip', below: 'knee', end: 'foot' },
  knee: { above: 'hip', below: 'ankle', end: 'foot' },
  'lower-leg': { above: 'knee', below: 'ankle', end: 'foot' },
  ankle: { above: 'knee', below: 'foot', end: 'foot' },
  foot: { above: 'ankle', below: 'toes', end: 'foot' },
};

export interface Focus extends Reckoned {
  readonly place: Place;
  readonly text: string;
}

/** Was anything found or denied at the place itself, or at a wider one that takes it in? */
const examined = (chart: Chart, place: Place): boolean =>
  SELF_AND_HOLDERS[place.site].some((site) =>
    chart.at(site).some((entry) => entry.kind === 'finding' && takesIn(place, site, entry.side)),
  );

/** For each hurt side of one site of a limb, what of its focused examination was not said. */
function focusAt(chart: Chart, site: Site, next: Neighbours): readonly Focus[] {
  const hurt = chart.foundAt(site);
  const sides = new Set(hurt.flatMap((entry) => sidesOf(site, entry.side)));
  return [...sides].map((side) => {
    const place: Place = { site, side };
    const found = hurt.filter((entry) => sidesOf(site, entry.side).includes(side));
    const joints = [next.above, next.below].map(
      (site): Place => ({ site, side: site === 'neck' || site === 'pelvis' ? null : place.side }),
    );
    const end: Place = { site: next.end, side: place.side };
    const missing = [
      ...joints.filter((joint) => !examined(chart, joint)).map((joint) => placeText(joint.site, joint.side)),
      ...ASPECTS.filter((aspect) => csmAt(chart, end, aspect).length === 0).map(
        (aspect) => `${aspect} of the ${placeText(end.site, end.side)}`,
      ),
    ];
    return { place, text: placeText(place.site, place.side), ...reckoned(found, COMMON_PRACTICE, missing) };
  });
}

/** A rule for each site of the limbs, in exam order. */
export const FOCUS_RULES: readonly Rule<readonly Focus[]>[] = SITES.flatMap((site) => {
  const next = NEIGHBOURS[site];
  return next === undefined ? [] : [(chart: Chart) => focusAt(chart, site, next)];
});
