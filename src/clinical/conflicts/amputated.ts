// A finding beyond an amputation: the part is no longer there to have it.

import type { Site } from '../../terms/index.ts';
import { type Chart, type EntryOf, timeOf } from '../chart.ts';
import { isWithin, placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { sidesOf } from '../side.ts';
import { type Conflict, conflictOf } from './conflict.ts';

const CHAINS: readonly (readonly Site[])[] = [
  ['shoulder', 'upper-arm', 'elbow', 'forearm', 'wrist', 'hand'],
  ['hip', 'thigh', 'knee', 'lower-leg', 'ankle', 'foot'],
];

/** True where `site` lies beyond `stump` on its limb; fingers and toes lie beyond, and with, their hand or foot. */
export function isBeyond(site: Site, stump: Site): boolean {
  const chain = CHAINS.find((each) => each.includes(stump));
  if (chain === undefined) return false;
  return chain.slice(chain.indexOf(stump) + 1).some((beyond) => isWithin(site, beyond));
}

/** A lost hand or foot cannot be checked, and its fingers or toes have nothing; a wound named after it is the stump's. */
const isGone = (entry: FindingEntry | EntryOf<'csm'>, stump: Site): boolean =>
  isBeyond(entry.site, stump) ||
  (entry.kind === 'csm' && entry.digit === undefined && entry.site === stump) ||
  ((stump === 'hand' || stump === 'foot') && entry.site !== stump && isWithin(entry.site, stump));

/** What was said, at or after the amputation, of a part beyond it on the same side. */
export const onAmputated = (chart: Chart): readonly Conflict[] =>
  chart.found('amputation').flatMap((stump) => {
    const beyond = [...chart.findings, ...chart.csm].filter(
      (entry: FindingEntry | EntryOf<'csm'>) =>
        timeOf(entry) >= timeOf(stump) &&
        (entry.kind !== 'csm' || entry.present) &&
        (entry.kind !== 'finding' || entry.finding !== 'amputation') &&
        isGone(entry, stump.site) &&
        sidesOf(entry.site, entry.side).some((side) => sidesOf(stump.site, stump.side).includes(side)),
    );
    const first = beyond[0];
    if (first === undefined) return [];
    const question = `${placeText(stump.site, stump.side)} is amputated, but the ${placeText(first.site, first.side)} was examined. Which side or site?`;
    return [conflictOf('amputated', question, [stump, ...beyond])];
  });
