// The same invented examination twice with one entry changed: only what rests on that entry changes.

import { describe, expect, it } from 'vitest';
import { type Reckoning, reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import {
  age,
  avpu,
  breaths,
  cared,
  celsius,
  clock,
  csmAllFour,
  denied,
  found,
  gcs,
  minute,
  pressure,
  pulse,
  saturation,
  told,
} from './build.ts';

const swelling = denied('knee', 'right', 'swelling', { at: minute(6) });
const systolic = pressure(118, 76, 2);
const exam: readonly Entry[] = [
  age(34),
  told('mechanism', 'fell six feet'),
  told('medications', 'no medications', false),
  pulse(88, 2),
  systolic,
  breaths(16, 2, ['easy']),
  saturation(97, false, 2),
  gcs(4, 5, 6, 2),
  avpu('A', 4, 2),
  celsius(36.6, 2),
  denied('skull', null, 'deformity', { at: minute(4) }),
  denied('cervical-spine', null, 'tenderness', { at: minute(4) }),
  denied('chest', null, 'instability', { at: minute(5) }),
  denied('abdomen', null, 'tenderness', { at: minute(5) }),
  swelling,
  found('wrist', 'left', 'deformity', { at: minute(7) }),
  cared('splint', 'wrist', 'left', 9),
  ...csmAllFour(10),
];

const at = (entries: readonly Entry[]): Reckoning => reckon(entries, { now: clock(12) });

/** The names of the parts, and of their rows, that are not the same. */
function changed(before: Reckoning, after: Reckoning): readonly string[] {
  const rows = (
    name: string,
    a: readonly unknown[],
    b: readonly unknown[],
    label: (row: never) => string,
  ): string[] =>
    [...a, ...b].flatMap((row) => {
      const has = (list: readonly unknown[]): boolean =>
        list.some((other) => JSON.stringify(other) === JSON.stringify(row));
      return has(a) && has(b) ? [] : [`${name}: ${label(row as never)}`];
    });
  return [
    ...new Set([
      ...rows('flag', before.flags, after.flags, (row: Reckoning['flags'][number]) => row.rule),
      ...rows(
        'coverage',
        before.coverage,
        after.coverage,
        (row: Reckoning['coverage'][number]) => `${row.side} ${row.site}`,
      ),
      ...rows('step', before.steps, after.steps, (row: Reckoning['steps'][number]) => row.text),
      ...rows(
        'score',
        before.scoreCards,
        after.scoreCards,
        (row: Reckoning['scoreCards'][number]) => row.score,
      ),
      ...rows('series', before.series, after.series, (row: Reckoning['series'][number]) => row.measure),
      ...rows('problem', before.problems, after.problems, (row: Reckoning['problems'][number]) => row.id),
      ...rows(
        'spine',
        before.spine.items,
        after.spine.items,
        (row: Reckoning['spine']['items'][number]) => row.item,
      ),
      ...rows('focus', before.focus, after.focus, (row: Reckoning['focus'][number]) => row.text),
      ...rows('clock', before.clocks, after.clocks, (row: Reckoning['clocks'][number]) => row.clock),
      ...rows('limb end', before.limbEnds, after.limbEnds, (row: Reckoning['limbEnds'][number]) => row.text),
      ...rows('recheck', before.rechecks, after.rechecks, (row: Reckoning['rechecks'][number]) => row.text),
      ...rows(
        'pattern',
        before.patterns,
        after.patterns,
        (row: Reckoning['patterns'][number]) => row.pattern,
      ),
      ...rows(
        'conflict',
        before.conflicts,
        after.conflicts,
        (row: Reckoning['conflicts'][number]) => row.conflict,
      ),
      ...(before.due.stability === after.due.stability ? [] : ['due']),
      ...(JSON.stringify(before.burns) === JSON.stringify(after.burns) ? [] : ['burns']),
    ]),
  ].sort();
}

const swap = (old: Entry, fresh: Entry): readonly Entry[] =>
  exam.map((entry) => (entry === old ? fresh : entry));

describe('the same examination with one entry changed', () => {
  it('is the same where nothing changed', () => {
    expect(changed(at(exam), at(exam))).toEqual([]);
  });

  it('changes, with a denied swelling found after all, its site, its problem and the questions that hang on injuries', () => {
    const turned = { ...swelling, present: true } as Entry;
    expect(changed(at(exam), at(swap(swelling, turned)))).toEqual([
      'coverage: right knee',
      'focus: right knee',
      'problem: right knee',
      'spine: painful distracting injury',
      'step: right knee',
    ]);
  });

  it('changes, with another pressure, what rests on the pressure', () => {
    const low = { ...pressure(84, 50, 2), id: systolic.id };
    expect(changed(at(exam), at(swap(systolic, low)))).toEqual([
      'due',
      'flag: pulse-over-systolic',
      'flag: systolic-10-to-64',
      'flag: systolic-65-up',
      'score: mean-arterial-pressure',
      'score: news2',
      'score: revised-trauma-score',
      'score: shock-index',
      'series: diastolic',
      'series: systolic',
    ]);
  });

  it('changes, with one entry confirmed, only its mark', () => {
    const heard = { ...swelling, state: 'heard' as const };
    expect(changed(at(exam), at(swap(swelling, heard)))).toEqual([]);
    const wrist = exam.find((entry) => entry.kind === 'finding' && entry.site === 'wrist') as Entry;
    expect(changed(at(exam), at(swap(wrist, { ...wrist, state: 'heard' })))).toEqual([
      'flag: burns-with-trauma',
      'focus: left wrist',
      'problem: left wrist',
      'spine: painful distracting injury',
    ]);
  });
});
