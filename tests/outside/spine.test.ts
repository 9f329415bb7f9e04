// The items of the two spine rules against their published definitions, at both edges; patients are invented.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { age, avpu, clock, csm, csmAllFour, denied, found, gcs, told, vital } from '../clinical/build.ts';

const stateOf = (item: string, entries: readonly Entry[]): string | undefined =>
  reckon(entries, { now: clock(0) }).spine.items.find((each) => each.item === item)?.state;

type Row = readonly [string, readonly Entry[], 'present' | 'absent' | 'unknown'];
const check = (item: string, rows: readonly Row[]): void => {
  describe(`the item: ${item}`, () => {
    it.each(rows)('%s', (_, entries, state) => expect(stateOf(item, entries)).toBe(state));
  });
};

describe('the items', () => {
  // Read: Hoffman JR et al. N Engl J Med 2000;343:94-99; Stiell IG et al. JAMA 2001;286:1841-1848.
  it('are the five of NEXUS and the three steps of the Canadian rule', () => {
    const { items } = reckon([], { now: clock(0) }).spine;
    expect(items.map(({ set, step }) => `${set} ${step}`)).toEqual([
      ...Array.from({ length: 5 }, () => 'nexus low-risk criterion'),
      ...Array.from({ length: 2 }, () => 'canadian applies to'),
      ...Array.from({ length: 3 }, () => 'canadian high-risk factor'),
      ...Array.from({ length: 5 }, () => 'canadian low-risk factor'),
      'canadian movement',
    ]);
  });
});

// NEXUS, definitions read: Ann Emerg Med 1998;32:461-469.
check('altered alertness', [
  ['GCS 14', [gcs(4, 4, 6)], 'present'],
  ['GCS 15, oriented to person, place, time and event', [gcs(4, 5, 6), avpu('A', 4)], 'absent'],
  ['disoriented to one of them', [gcs(4, 5, 6), avpu('A', 3)], 'present'],
  ['responds to voice', [avpu('V')], 'present'],
  ['verbal not testable', [gcs(4, 'NT', 6)], 'unknown'],
]);
check('posterior midline cervical tenderness', [
  ['tender at C5', [found('cervical-spine', 'midline', 'tenderness', {}, { level: 'C5' })], 'present'],
  ['tender behind the neck', [found('neck', null, 'tenderness', {}, { part: ['posterior'] })], 'present'],
  ['tender on the left of the neck', [found('neck', 'left', 'tenderness')], 'unknown'],
  ['the whole spine not tender', [denied('spine', null, 'tenderness')], 'absent'],
  ['the neck not tender in the middle', [denied('neck', 'midline', 'tenderness')], 'absent'],
  ['the neck not tender on the left', [denied('neck', 'left', 'tenderness')], 'unknown'],
]);
check('focal neurological deficit', [
  ['a weak hand', [csm('hand', 'left', 'motion', true, {}, { strength: 'weak' })], 'present'],
  ['a numb foot', [csm('foot', 'right', 'sensation', false)], 'present'],
  ['a face that droops', [found('face', null, 'asymmetry')], 'present'],
  ['all four intact', csmAllFour(), 'absent'],
  ['both hands intact', csmAllFour().slice(0, 6), 'unknown'],
]);
check('intoxication', [
  ['drunk', [told('events', 'he is drunk')], 'present'],
  ['beer', [told('last-intake', 'three beers')], 'unknown'],
  ['denied', [told('last-intake', 'denies alcohol', false)], 'absent'],
  ['not said', [], 'unknown'],
]);
check('painful distracting injury', [
  ['a broken long bone', [found('lower-leg', 'left', 'deformity')], 'present'],
  [
    'a fracture named so',
    [found('forearm', 'left', 'abnormality', {}, { quality: ['fracture'] })],
    'present',
  ],
  ['a degloved hand', [found('hand', 'left', 'avulsion')], 'present'],
  ['a small cut asks', [found('hand', 'left', 'laceration')], 'unknown'],
  ['nothing found and no pain', [vital({ vital: 'pain-score', value: { score: 0 } })], 'absent'],
  ['pain 1', [vital({ vital: 'pain-score', value: { score: 1 } })], 'unknown'],
]);

// The Canadian rule, figure read as quoted in N Engl J Med 2003;349:2510-2518; the age of 16 is from memory.
check('age 16 or over', [
  ['15', [age(15)], 'absent'],
  ['16', [age(16)], 'present'],
  ['not said', [], 'unknown'],
]);
check('age 65 or over', [
  ['64', [age(64)], 'absent'],
  ['65', [age(65)], 'present'],
]);
check('dangerous mechanism', [
  ['a fall of 3 feet', [told('mechanism', 'fell three feet')], 'present'],
  ['a fall of under 3 feet', [told('mechanism', 'fell two and a half feet')], 'unknown'],
  ['a fall of a metre', [told('mechanism', 'fell one metre')], 'present'],
  ['a fall of 5 stairs', [told('mechanism', 'fell down five stairs')], 'present'],
  ['a fall of 4 stairs', [told('mechanism', 'fell down 4 steps')], 'unknown'],
  ['a load on the head', [told('mechanism', 'dove into the shallows')], 'present'],
  ['a crash at 101 km/h', [told('mechanism', 'car crash at 101 km/h')], 'present'],
  ['a crash at 100 km/h', [told('mechanism', 'car crash at 100 km/h')], 'unknown'],
  ['a crash at 63 miles an hour, 101 km/h', [told('mechanism', 'crash at 63 miles an hour')], 'present'],
  ['a crash at 62 miles an hour, 99.8 km/h', [told('mechanism', 'crash at 62 miles an hour')], 'unknown'],
  ['a rollover', [told('mechanism', 'the car rolled over')], 'present'],
  ['an ejection', [told('mechanism', 'ejected from the truck')], 'present'],
  ['a motorised recreational vehicle', [told('mechanism', 'four wheeler tipped on him')], 'present'],
  ['a bicycle', [told('mechanism', 'hit by a car while on his bike')], 'present'],
  ['a plain slip', [told('mechanism', 'slipped on the grass')], 'unknown'],
]);
check('paraesthesias in extremities', [
  ['a tingling hand', [found('hand', 'left', 'tingling')], 'present'],
  ['a numb foot', [csm('foot', 'left', 'sensation', false)], 'present'],
  ['tingling lips', [found('mouth', null, 'tingling')], 'unknown'],
  ['sensation in all four', csmAllFour(), 'absent'],
]);
check('simple rear-end crash', [
  ['rear-ended', [told('mechanism', 'rear-ended at a light')], 'present'],
  ['not rear-ended', [told('mechanism', 'not rear-ended')], 'absent'],
  [
    'pushed into oncoming traffic',
    [told('mechanism', 'rear-ended and pushed into oncoming traffic')],
    'absent',
  ],
  ['by a bus', [told('mechanism', 'rear-ended by a bus')], 'absent'],
  ['by a large truck', [told('mechanism', 'rear-ended by a truck')], 'absent'],
  ['and rolled over', [told('mechanism', 'rear-ended, the car rolled over')], 'absent'],
  ['at high speed', [told('mechanism', 'rear-ended at high speed')], 'absent'],
]);
check('sitting position in the emergency department', [['whatever was said', csmAllFour(), 'unknown']]);
check('walking at any time since', [
  ['walked', [told('events', 'walked to the road')], 'present'],
  ['did not walk', [told('events', 'has not walked since')], 'absent'],
  ['not said', [], 'unknown'],
]);
check('delayed onset of neck pain', [
  ['an hour after', [told('onset', 'neck began to hurt an hour after')], 'present'],
  ['not said', [], 'unknown'],
]);
check('no midline tenderness', [
  ['tender', [found('cervical-spine', null, 'tenderness')], 'absent'],
  ['denied', [denied('cervical-spine', null, 'tenderness')], 'present'],
]);
check('turns the neck 45 degrees left and right', [
  ['limited', [found('neck', null, 'limited-motion')], 'absent'],
  ['not said', [], 'unknown'],
]);
