// GCS-P: the GCS sum less the number of pupils that do not react; undefined where either is not known.

import { type Chart, type VitalEntry, vitalsOf } from '../chart.ts';
import type { Source } from '../source.ts';
import { gcsReadings } from './gcs.ts';
import { type Score, scoreOf } from './score.ts';

export const GCS_PUPILS_SOURCE: Source = {
  cite: 'GCS-P: Brennan PM, Murray GD, Teasdale GM. J Neurosurg 2018;128:1612-1620',
  mark: 'read',
  note: 'abstract',
};

/** GCS 3 to 15 less 0, 1 or 2 pupils that do not react: 1 to 15. */
export const gcsPupils = (gcs: number, nonReacting: 0 | 1 | 2): number => gcs - nonReacting;

/** How many pupils do not react; null where one of them was not said. */
export function nonReactingPupils(value: VitalEntry<'pupils'>['value']): 0 | 1 | 2 | null {
  const left = value.leftReactive ?? value.reactive;
  const right = value.rightReactive ?? value.reactive;
  if (left === undefined || right === undefined) return null;
  return left ? (right ? 0 : 1) : right ? 1 : 2;
}

/** GCS-P from the latest GCS and the latest pupils. */
export function gcsPupilsScore(chart: Chart): Score {
  const gcs = chart.ask(gcsReadings).at(-1);
  const pupils = vitalsOf(chart, 'pupils').at(-1);
  const dead = pupils === undefined ? null : nonReactingPupils(pupils.value);
  const entries = [...(gcs?.entries ?? []), ...(pupils === undefined ? [] : [pupils])];
  const total = gcs?.total ?? null;
  if (total === null || dead === null) {
    const missing = [
      ...(total === null ? ['GCS total'] : []),
      ...(dead === null ? ['whether each pupil reacts'] : []),
    ];
    return scoreOf('gcs-pupils', null, 'GCS-P not known', entries, GCS_PUPILS_SOURCE, missing);
  }
  const value = gcsPupils(total, dead);
  return scoreOf(
    'gcs-pupils',
    value,
    `GCS-P ${total} - ${dead} not reacting = ${value}`,
    entries,
    GCS_PUPILS_SOURCE,
  );
}
