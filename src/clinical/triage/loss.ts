// Motor and sensory loss of the limbs: found, ruled out by all four ends being intact, or unknown.

import type { Entry } from '../../record/entry.ts';
import type { Aspect } from '../../terms/index.ts';
import { type Answer, no, unknown, yes } from '../answer.ts';
import { type Chart, clockText } from '../chart.ts';
import { checksOf, isImpaired, LIMB_ENDS } from '../limb-end.ts';
import { betterThan, betterWords } from '../limb-return.ts';
import { placeText } from '../place.ts';
import { foundWithin } from '../said.ts';

/** The entries that say an aspect is intact in all of each of the four ends; what lacks is named. */
export function intactInAllFour(chart: Chart, aspects: readonly Aspect[]): Answer {
  const evidence: Entry[] = [];
  const missing: string[] = [];
  for (const end of LIMB_ENDS)
    for (const aspect of aspects) {
      const intact = checksOf(chart, end, aspect).filter(
        (entry) => entry.digit === undefined && !isImpaired(entry),
      );
      evidence.push(...intact);
      if (intact.length === 0) missing.push(`${aspect} of the ${placeText(end.site, end.side)}`);
    }
  return missing.length > 0 ? unknown(missing, evidence) : yes(evidence);
}

/** `sensation of the left foot intact at 09:15`: what was said since of what was lost. */
const returned = (chart: Chart, lost: readonly Entry[]): readonly string[] => [
  ...new Set(
    lost.flatMap((entry) => {
      const since = entry.kind === 'csm' ? betterThan(entry, chart.csm, 'later') : null;
      return since === null
        ? []
        : [
            `${since.aspect} of the ${placeText(since.site, since.side)} ${betterWords(since, clockText(since))}`,
          ];
    }),
  ),
];

/** New motor or sensory loss: yes with its entries; no only where sensation and motion are intact in all four. */
export function neurologicalLoss(chart: Chart): Answer {
  const lost: readonly Entry[] = [
    ...chart.csm.filter((entry) => entry.aspect !== 'circulation' && isImpaired(entry)),
    ...foundWithin(
      chart,
      ['arm', 'leg', 'back', 'neck', 'shoulder', 'pelvis', 'chest', 'abdomen'],
      ['numbness', 'weakness', 'paralysis'],
    ),
  ];
  if (lost.length > 0) return yes(lost, ['motor or sensory loss', ...returned(chart, lost)].join('; '));
  const altered = foundWithin(chart, ['arm', 'leg', 'back', 'shoulder', 'neck'], ['tingling']);
  const intact = intactInAllFour(chart, ['sensation', 'motion']);
  if (altered.length > 0) return unknown(['whether the tingling is a loss of sensation'], altered);
  return intact.truth === 'yes'
    ? no(intact.evidence, 'sensation and motion intact in all four')
    : unknown(intact.missing);
}
