// The criteria that findings on skull, chest wall and pelvis decide.

import type { Site } from '../../terms/index.ts';
import { type Answer, any, unknown, yes } from '../answer.ts';
import { breaksAt, fracturesAt } from '../broken.ts';
import type { Chart } from '../chart.ts';
import { bothOf, wholeOf } from '../place.ts';
import { deniedInAll, foundAt, foundWithin } from '../said.ts';
import * as zones from '../zones.ts';
import { named } from './reason.ts';

const SKULL: readonly Site[] = ['skull', 'head', 'forehead'];

/** Skull deformity; leaking fluid or bruising that is taught as a sign of a broken base (from memory) is a suspicion. */
export function skull(chart: Chart): Answer {
  const met = [
    ...breaksAt(chart, SKULL),
    ...foundAt(chart, ['ear'], ['fluid']),
    ...foundAt(chart, ['behind-ear'], ['contusion', 'discoloration']),
  ];
  if (met.length > 0) return yes(met, named(met));
  const signs = [
    ...foundAt(chart, ['nose'], ['fluid']),
    ...foundAt(chart, ['eye'], ['contusion', 'discoloration']),
    ...foundAt(chart, SKULL, ['swelling', 'asymmetry']),
  ];
  if (signs.length > 0) return unknown(['whether a skull fracture is suspected'], signs, named(signs));
  // The signs of a broken base count as much as a step in the vault: each must have been looked for.
  return any([
    deniedInAll(chart, [{ whole: wholeOf('skull') }], ['deformity']),
    deniedInAll(
      chart,
      bothOf('ear').map((whole) => ({ whole })),
      ['fluid'],
    ),
    deniedInAll(
      chart,
      bothOf('behind-ear').map((whole) => ({ whole })),
      ['contusion'],
    ),
  ]);
}

const CHEST: readonly Site[] = ['chest', 'ribs', 'sternum'];

/** Chest wall that is unstable, deformed or moves the wrong way. */
export function chestWall(chart: Chart): Answer {
  const met = foundAt(chart, CHEST, ['instability', 'deformity', 'paradoxical-motion']);
  if (met.length > 0) return yes(met, named(met));
  const signs = [...foundAt(chart, CHEST, ['crepitus', 'asymmetry']), ...fracturesAt(chart, CHEST)];
  if (signs.length > 0) return unknown(['whether the chest wall is stable'], signs, named(signs));
  return deniedInAll(chart, [zones.CHEST], ['instability', 'deformity']);
}

/** Pelvic fracture is suspected where the pelvis is unstable or deformed, or has been bound. */
export function pelvis(chart: Chart): Answer {
  const met = breaksAt(chart, ['pelvis']);
  const bound = chart.care.filter((entry) => entry.care === 'pelvic-binder');
  const signs = [
    ...foundWithin(chart, ['pelvis'], ['tenderness', 'pain', 'contusion']),
    ...breaksAt(chart, ['hip']),
  ];
  if (met.length > 0 || bound.length > 0)
    return yes([...met, ...bound, ...signs], met.length > 0 ? named(met) : 'pelvis bound');
  if (signs.length > 0) return unknown(['whether a pelvic fracture is suspected'], signs, named(signs));
  return deniedInAll(chart, [zones.PELVIS], ['instability', 'tenderness']);
}
