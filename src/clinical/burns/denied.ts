// Which burns were denied after they were found: what is reckoned of them is not settled.

import { type Chart, timeOf } from '../chart.ts';
import { type Place, takesIn } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { sidesOf } from '../side.ts';

export interface DeniedBurn {
  readonly burn: FindingEntry;
  readonly denial: FindingEntry;
}

const placesOf = ({ site, side }: FindingEntry): readonly Place[] =>
  sidesOf(site, side).map((one) => ({ site, side: one }));

/** One of them takes in a place of the other: the arm is not burned, or the hand of a burned arm is not. */
const meet = (one: FindingEntry, other: FindingEntry): boolean =>
  placesOf(one).some((place) => takesIn(place, other.site, other.side)) ||
  placesOf(other).some((place) => takesIn(place, one.site, one.side));

/**
 * The burns against which the last word stands. A burn that was found after "no burns" is a burn, and so is one that was
 * told again after it was denied.
 */
export function deniedBurns(chart: Chart, burns: readonly FindingEntry[]): readonly DeniedBurn[] {
  const denials = chart.denied('burn');
  return burns.flatMap((burn) => {
    const denial = denials.findLast((one) => timeOf(one) > timeOf(burn) && meet(burn, one));
    if (denial === undefined) return [];
    const isToldAgain = burns.some((other) => timeOf(other) > timeOf(denial) && meet(other, denial));
    return isToldAgain ? [] : [{ burn, denial }];
  });
}
