// Circulation, sensation and motion of both hands and both feet: how each stands, or not checked.

import { ASPECTS, type Aspect, type Finding } from '../../terms/index.ts';
import { type Chart, type EntryOf, type Rule, timeOf } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { checksOf, impairedOf, isImpaired, LIMB_ENDS, standingOf, wordsOf } from '../limb-end.ts';
import { type Place, placeText } from '../place.ts';
import { sidesOf } from '../side.ts';
import { COMMON_PRACTICE } from '../source.ts';

export interface LimbEnd extends Reckoned {
  readonly place: Place;
  readonly aspect: Aspect;
  readonly state: 'intact' | 'not-intact' | 'not-checked';
  readonly text: string;
}

/** The entries on one aspect of one limb's end as a whole, earliest first; a single digit is not the whole. */
export const csmAt = (chart: Chart, end: Place, aspect: Aspect): readonly EntryOf<'csm'>[] =>
  checksOf(chart, end, aspect).filter((entry) => entry.digit === undefined || isImpaired(entry));

/** Findings on the end itself that say the same as an aspect that is not whole. */
const ALIKE: Readonly<Record<Aspect, readonly Finding[]>> = {
  circulation: [],
  sensation: ['numbness', 'tingling'],
  motion: ['weakness', 'paralysis'],
};

/** "Left foot numb" after "sensation intact": the latest word counts. */
const alikeSince = (chart: Chart, end: Place, aspect: Aspect, since: number): readonly EntryOf<'finding'>[] =>
  chart
    .foundAt(end.site)
    .filter(
      (entry) =>
        ALIKE[aspect].includes(entry.finding) &&
        sidesOf(entry.site, entry.side).includes(end.side) &&
        timeOf(entry) >= since,
    );

/** A rule for each of twelve rows: two hands and two feet, three aspects each. */
export const LIMB_END_RULES: readonly Rule<LimbEnd>[] = LIMB_ENDS.flatMap((place) =>
  ASPECTS.map((aspect) => (chart: Chart): LimbEnd => {
    const standing = standingOf(csmAt(chart, place, aspect));
    const last = standing.at(-1);
    const since = last === undefined ? Number.NEGATIVE_INFINITY : timeOf(last);
    const alike = alikeSince(chart, place, aspect, since);
    const impaired = [...impairedOf(standing), ...alike];
    const name = `${aspect} of the ${placeText(place.site, place.side)}`;
    const checked = standing.length + alike.length > 0;
    const words = [
      ...(impairedOf(standing).length > 0 || alike.length === 0 ? [wordsOf(standing)] : []),
      ...new Set(alike.map(({ finding }) => finding)),
    ].join(', ');
    return {
      place,
      aspect,
      state: !checked ? 'not-checked' : impaired.length > 0 ? 'not-intact' : 'intact',
      text: `${name}: ${checked ? words : 'not checked'}`,
      ...reckoned(impaired.length > 0 ? impaired : standing, COMMON_PRACTICE, checked ? [] : [name]),
    };
  }),
);
