// GCS-P: the GCS sum less the number of pupils that do not react; undefined where either is not known.

import { type Chart, timeOf, type VitalEntry, vitalsOf } from '../chart.ts';
import type { Source } from '../source.ts';
import { SET_MINUTES } from '../vitals/set-length.ts';
import { gcsReadings } from './gcs.ts';
import { type Score, scoreOf } from './score.ts';

export const GCS_PUPILS_SOURCE: Source = {
  cite: 'GCS-P: Brennan PM, Murray GD, Teasdale GM. J Neurosurg 2018;128:1612-1620',
  mark: 'read',
  note: 'abstract',
};

/** GCS 3 to 15 less 0, 1 or 2 pupils that do not react: 1 to 15. */
export const gcsPupils = (gcs: number, nonReacting: 0 | 1 | 2): number => gcs - nonReacting;

type PupilsEntry = VitalEntry<'pupils'>;

/** How many pupils do not react; null where one of them was not said. */
export function nonReactingPupils(value: VitalEntry<'pupils'>['value']): 0 | 1 | 2 | null {
  const left = value.leftReactive ?? value.reactive;
  const right = value.rightReactive ?? value.reactive;
  if (left === undefined || right === undefined) return null;
  return left ? (right ? 0 : 1) : right ? 1 : 2;
}

/** The latest word on each pupil, from the readings of one set: "left pupil fixed" and "right one reacts" may be two breaths. */
function lastPupils(chart: Chart): {
  readonly dead: 0 | 1 | 2 | null;
  readonly entries: readonly PupilsEntry[];
} {
  const read = vitalsOf(chart, 'pupils');
  const last = read.at(-1);
  if (last === undefined) return { dead: null, entries: [] };
  const value: { leftReactive?: boolean; rightReactive?: boolean } = {};
  const entries: PupilsEntry[] = [];
  for (const entry of read.toReversed()) {
    if (timeOf(last) - timeOf(entry) > SET_MINUTES * 60_000) break;
    const { reactive, leftReactive = reactive, rightReactive = reactive } = entry.value;
    const adds =
      (value.leftReactive === undefined && leftReactive !== undefined) ||
      (value.rightReactive === undefined && rightReactive !== undefined);
    if (leftReactive !== undefined) value.leftReactive ??= leftReactive;
    if (rightReactive !== undefined) value.rightReactive ??= rightReactive;
    if (adds) entries.push(entry);
  }
  return { dead: nonReactingPupils(value), entries: entries.length === 0 ? [last] : entries };
}

/** GCS-P from the latest GCS and the latest pupils. */
export function gcsPupilsScore(chart: Chart): Score {
  const gcs = chart.ask(gcsReadings).at(-1);
  const { dead, entries: pupils } = lastPupils(chart);
  const entries = [...(gcs?.entries ?? []), ...pupils];
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
