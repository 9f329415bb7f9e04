// The criterion of a suspected spinal injury with new motor or sensory loss.

import type { Finding, Site } from '../../terms/index.ts';
import { type Answer, all, unknown, yes } from '../answer.ts';
import { fracturesAt, isBreak } from '../broken.ts';
import type { Chart, EntryOf } from '../chart.ts';
import { isWithin } from '../place.ts';
import { type FindingEntry, foundAt, foundWithin } from '../said.ts';
import { sidesOf } from '../side.ts';
import { neurologicalLoss } from './loss.ts';
import { named } from './reason.ts';

const SPINE: readonly Site[] = ['cervical-spine', 'thoracic-spine', 'lumbar-spine', 'sacrum', 'spine'];
const SPINE_SIGNS: readonly Finding[] = [
  'tenderness',
  'deformity',
  'pain',
  'crepitus',
  'instability',
  'swelling',
];

/**
 * A spinal injury is suspected where a sign was found along the spine, or the spine is being protected. It is never
 * ruled out here: one who feels nothing has no tenderness, and a mechanism alone may raise the suspicion.
 */
function spineSuspected(chart: Chart): Answer {
  const signs = [
    ...foundAt(chart, SPINE, SPINE_SIGNS),
    ...fracturesAt(chart, SPINE),
    // Pain said to be on one side only is no word of the spine.
    ...foundAt(chart, ['neck', 'back'], ['tenderness', 'pain']).filter(
      (entry) => entry.side === null || entry.side === 'midline',
    ),
  ];
  const cared = chart.care.filter((entry) => entry.care === 'spine-protection' || entry.care === 'collar');
  if (signs.length > 0 || cared.length > 0)
    return yes([...signs, ...cared], signs.length > 0 ? named(signs) : 'spine protected');
  return unknown(['whether a spinal injury is suspected']);
}

const LIMB_INJURY: readonly Finding[] = ['deformity', 'crepitus', 'amputation', 'laceration', 'avulsion'];

/** Suspected spinal injury with new motor or sensory loss. A loss in one limb that is itself hurt decides nothing. */
export function spineWithLoss(chart: Chart): Answer {
  const loss = chart.ask(neurologicalLoss);
  const lost = loss.evidence.filter((entry) => entry.kind === 'csm' || entry.kind === 'finding');
  const limb = (site: Site): Site => (isWithin(site, 'arm') ? 'arm' : isWithin(site, 'leg') ? 'leg' : site);
  const injuries = (entry: EntryOf<'csm'> | FindingEntry): readonly FindingEntry[] =>
    [
      ...foundWithin(chart, [limb(entry.site)], LIMB_INJURY),
      ...foundWithin(chart, [limb(entry.site)], ['abnormality']).filter(isBreak),
    ].filter((injury) =>
      sidesOf(injury.site, injury.side).some((side) => sidesOf(entry.site, entry.side).includes(side)),
    );
  const oneLimb = new Set(lost.map((entry) => limb(entry.site))).size === 1;
  if (loss.truth === 'yes' && oneLimb && lost.every((entry) => injuries(entry).length > 0)) {
    return unknown(
      ['whether the loss comes from the spine or from the injured limb'],
      [...loss.evidence, ...lost.flatMap(injuries)],
    );
  }
  return all([spineSuspected(chart), loss]);
}
