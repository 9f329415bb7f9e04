// Circulation, sensation and motion of both hands and both feet: how each stands, or not checked.

import { ASPECTS, type Aspect } from '../../terms/index.ts';
import type { Chart, EntryOf, Rule } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { checksOf, impairedOf, isImpaired, LIMB_ENDS, standingOf, wordsOf } from '../limb-end.ts';
import { type Place, placeText } from '../place.ts';
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

/** A rule for each of twelve rows: two hands and two feet, three aspects each. */
export const LIMB_END_RULES: readonly Rule<LimbEnd>[] = LIMB_ENDS.flatMap((place) =>
  ASPECTS.map((aspect) => (chart: Chart): LimbEnd => {
    const standing = standingOf(csmAt(chart, place, aspect));
    const impaired = impairedOf(standing);
    const name = `${aspect} of the ${placeText(place.site, place.side)}`;
    const checked = standing.length > 0;
    return {
      place,
      aspect,
      state: !checked ? 'not-checked' : impaired.length > 0 ? 'not-intact' : 'intact',
      text: `${name}: ${checked ? wordsOf(standing) : 'not checked'}`,
      ...reckoned(impaired.length > 0 ? impaired : standing, COMMON_PRACTICE, checked ? [] : [name]),
    };
  }),
);
