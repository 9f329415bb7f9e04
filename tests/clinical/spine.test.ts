// The items of the two spine rules, on invented entries: recorded, with nothing concluded from them.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { age, avpu, clock, csm, csmAllFour, denied, found, gcs, told, vital } from './build.ts';

const stateOf = (item: string, entries: readonly Entry[]): string | undefined =>
  reckon(entries, { now: clock(0) }).spine.items.find((each) => each.item === item)?.state;

describe('the spine items', () => {
  const rows: readonly [string, string, readonly Entry[], string][] = [
    [
      'posterior midline cervical tenderness',
      'tender cervical spine',
      [found('cervical-spine', null, 'tenderness')],
      'present',
    ],
    [
      'posterior midline cervical tenderness',
      'a tender neck, where not said',
      [found('neck', null, 'tenderness')],
      'unknown',
    ],
    [
      'posterior midline cervical tenderness',
      'denied',
      [denied('cervical-spine', null, 'tenderness')],
      'absent',
    ],
    [
      'posterior midline cervical tenderness',
      'denied at one level only',
      [denied('cervical-spine', null, 'tenderness', {}, { level: 'C5' })],
      'unknown',
    ],
    ['focal neurological deficit', 'all four intact', csmAllFour(), 'absent'],
    ['focal neurological deficit', 'three intact', csmAllFour().slice(0, 9), 'unknown'],
    ['focal neurological deficit', 'a numb foot', [csm('foot', 'left', 'sensation', false)], 'present'],
    ['altered alertness', 'GCS 14', [gcs(4, 4, 6)], 'present'],
    ['altered alertness', 'alert alone', [avpu('A')], 'unknown'],
    ['altered alertness', 'GCS 15 alone', [gcs(4, 5, 6)], 'unknown'],
    ['altered alertness', 'GCS 15 and oriented to four', [gcs(4, 5, 6), avpu('A', 4)], 'absent'],
    ['altered alertness', 'oriented to three', [gcs(4, 5, 6), avpu('A', 3)], 'present'],
    ['intoxication', 'a beer asks', [told('last-intake', 'a beer at noon')], 'unknown'],
    ['intoxication', 'no alcohol', [told('last-intake', 'no alcohol')], 'absent'],
    ['intoxication', 'drunk', [told('events', 'drunk')], 'present'],
    ['painful distracting injury', 'deformed thigh', [found('thigh', 'left', 'deformity')], 'present'],
    ['painful distracting injury', 'a scrape asks', [found('knee', 'left', 'abrasion')], 'unknown'],
    [
      'painful distracting injury',
      'no injury, pain 0',
      [vital({ vital: 'pain-score', value: { score: 0 } })],
      'absent',
    ],
    ['age 65 or over', '65', [age(65)], 'present'],
    ['age 65 or over', '64', [age(64)], 'absent'],
    ['dangerous mechanism', 'a fall of three feet', [told('mechanism', 'fell three feet')], 'present'],
    ['dangerous mechanism', 'a fall of two feet asks', [told('mechanism', 'fell two feet')], 'unknown'],
    ['dangerous mechanism', 'a dive', [told('mechanism', 'dived into shallow water')], 'present'],
    ['paraesthesias in extremities', 'tingling hand', [found('hand', 'left', 'tingling')], 'present'],
    ['paraesthesias in extremities', 'sensation intact in all four', csmAllFour(), 'absent'],
    ['no midline tenderness', 'denied', [denied('cervical-spine', null, 'tenderness')], 'present'],
    ['walking at any time since', 'walked', [told('events', 'walked back to the hut')], 'present'],
    [
      'turns the neck 45 degrees left and right',
      'limited',
      [found('neck', null, 'limited-motion')],
      'absent',
    ],
  ];
  it.each(rows)('%s: %s', (item, _, entries, state) => {
    expect(stateOf(item, entries)).toBe(state);
  });

  it('are all unknown before anything is said', () => {
    expect(new Set(reckon([], { now: clock(0) }).spine.items.map((item) => item.state))).toEqual(
      new Set(['unknown']),
    );
  });

  it('never say that a spine is cleared, whatever is absent', () => {
    const entries = [
      denied('cervical-spine', null, 'tenderness'),
      ...csmAllFour(),
      gcs(4, 5, 6),
      avpu('A', 4),
      age(30),
      told('last-intake', 'no alcohol'),
    ];
    expect(JSON.stringify(reckon(entries, { now: clock(0) }))).not.toMatch(/\bcleared?\b(?!")/i);
  });
});
