// The criteria of a ruined or amputated limb.

import { ASPECTS, type Site } from '../../terms/index.ts';
import { type Answer, any, no, unknown, yes } from '../answer.ts';
import { type Chart, clockText, type EntryOf, timeOf } from '../chart.ts';
import { checksOf, isAbsent, isImpaired, LIMB_ENDS } from '../limb-end.ts';
import { betterThan, betterWords } from '../limb-return.ts';
import { isWithin, type Place, placeText } from '../place.ts';
import { denials, deniedInAll, foundWithin } from '../said.ts';
import { sidesOf } from '../side.ts';
import { EVENT_TOPICS, mentionOf } from '../told/mention.ts';
import { offOf, tourniquetsOf } from '../tourniquets/index.ts';
import * as zones from '../zones.ts';
import { intactInAllFour } from './loss.ts';
import { named, places } from './reason.ts';

const LIMBS: readonly Site[] = ['arm', 'leg'];
const MANGLED = /\b(?:crush\w*|deglov\w*|mangled)\b/i;

/** `left foot: no pulse at 09:10, intact at 09:15`: when each was, and what was said of it since. */
const pulselessText = (entry: EntryOf<'csm'>, since: EntryOf<'csm'> | null): string =>
  `${placeText(entry.site, entry.side)}: no pulse at ${clockText(entry)}${since === null ? '' : `, ${betterWords(since, clockText(since))}`}`;

/** When a tourniquet was said to be off for sure, epoch ms; of those that were not, never. */
function offTime(chart: Chart, care: EntryOf<'care'>): number {
  const notes = chart.words.filter((entry) => entry.kind === 'note');
  const one = tourniquetsOf(chart.care, notes).find(({ entries }) => entries.includes(care));
  const off = one === undefined ? null : offOf(one);
  return off === null ? Number.POSITIVE_INFINITY : timeOf(off);
}

/** Crushed, degloved or mangled as said, or a limb's end without a pulse that no tourniquet explains. */
export function ruinedLimb(chart: Chart): Answer {
  const worded = chart
    .found()
    .filter(
      (entry) =>
        LIMBS.some((limb) => isWithin(entry.site, limb)) && MANGLED.test((entry.quality ?? []).join(' ')),
    );
  const pulseless = chart.csm.filter((entry) => entry.aspect === 'circulation' && isAbsent(entry));
  // A tourniquet of which the limb or side was not said may be on this one.
  const ties = (entry: EntryOf<'csm'>): readonly EntryOf<'care'>[] =>
    chart.care.filter(
      (care) =>
        care.care === 'tourniquet' &&
        timeOf(care) <= timeOf(entry) &&
        (care.site === undefined || isWithin(care.site, entry.site === 'hand' ? 'arm' : 'leg')) &&
        (care.site === undefined ||
          (care.side ?? null) === null ||
          sidesOf(care.site, care.side ?? null).some((side) =>
            sidesOf(entry.site, entry.side).includes(side),
          )) &&
        // One that was off by then explains nothing.
        offTime(chart, care) > timeOf(entry),
    );
  // One reading on the wrong side at any time meets it, for it was so then; what was said since stands beside it.
  const free = pulseless
    .filter((entry) => ties(entry).length === 0)
    .map((entry) => ({ entry, since: betterThan(entry, chart.csm, 'later') }));
  if (worded.length > 0 || free.length > 0)
    return yes(
      [...worded, ...free.flatMap(({ entry, since }) => [entry, ...(since === null ? [] : [since])])],
      ...(worded.length === 0 ? [] : [places(worded)]),
      ...free.map(({ entry, since }) => pulselessText(entry, since)),
    );
  const below = pulseless.flatMap((entry) => (ties(entry).length === 0 ? [] : [entry, ...ties(entry)]));
  if (below.length > 0) return unknown(['the pulse before the tourniquet'], below);
  const signs = [
    ...foundWithin(chart, LIMBS, ['avulsion']),
    ...chart.csm.filter((entry) => entry.aspect === 'circulation' && isImpaired(entry)),
  ];
  if (signs.length > 0) return unknown(['whether the limb is degloved, crushed or pulseless'], signs);
  const told = mentionOf(chart, EVENT_TOPICS, MANGLED);
  if (told.said.length + told.hinted.length > 0)
    return unknown(['which limb is crushed or mangled'], [...told.said, ...told.hinted]);
  const pulses = intactInAllFour(chart, ['circulation']);
  const whole = deniedInAll(chart, [...zones.ARMS, ...zones.LEGS], ['deformity']);
  return whole.truth === 'no' && pulses.truth === 'yes'
    ? no([...whole.evidence, ...pulses.evidence], 'pulses in all four, no deformity of a limb')
    : unknown([...pulses.missing, ...whole.missing]);
}

const END_OR_JOINT: readonly Site[] = ['wrist', 'ankle', 'hand', 'foot'];

const isPartial = ({ part }: EntryOf<'finding'>): boolean => (part ?? []).includes('distal');

/** Amputation above the wrist or ankle. A hand or foot with anything intact rules it out for its limb. */
export function amputation(chart: Chart): Answer {
  const lost = foundWithin(chart, ['arm', 'leg', 'shoulder', 'hip'], ['amputation']);
  const above = lost.filter(
    (entry) =>
      !['wrist', 'ankle'].includes(entry.site) &&
      !isWithin(entry.site, 'hand') &&
      !isWithin(entry.site, 'foot'),
  );
  if (above.length > 0) return yes(above, named(above));
  // A hand or foot that is lost may be lost at the joint or above it.
  const atJoint = lost.filter((entry) => END_OR_JOINT.includes(entry.site) && !isPartial(entry));
  if (atJoint.length > 0) return unknown(['whether it is above the wrist or ankle'], atJoint, named(atJoint));
  return any(
    LIMB_ENDS.map((end): Answer => {
      const limb: Place = { site: end.site === 'hand' ? 'arm' : 'leg', side: end.side };
      const intact = ASPECTS.flatMap((aspect) => checksOf(chart, end, aspect)).filter(
        (entry) => entry.present,
      );
      const ruledOut = [...intact, ...denials(chart, limb, 'amputation')];
      return ruledOut.length > 0
        ? no(ruledOut)
        : unknown([`amputation of the ${placeText(limb.site, limb.side)}`]);
    }),
  );
}
