// Conflicts and slips, on invented entries: what must be asked, and what must not.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import {
  cared,
  celsius,
  clock,
  csm,
  csmAllFour,
  denied,
  found,
  minute,
  pressure,
  pulse,
  saturation,
  vital,
} from './build.ts';

const asked = (entries: readonly Entry[]): readonly string[] =>
  reckon(entries, { now: clock(60) }).conflicts.map((conflict) => conflict.conflict);
const late = { at: minute(5) };

const rows: readonly [string, readonly Entry[], readonly string[]][] = [
  [
    'denied, then found',
    [denied('knee', 'left', 'swelling'), found('knee', 'left', 'swelling', late)],
    ['opposite'],
  ],
  [
    'denied on both, found on one',
    [denied('knee', 'both', 'swelling'), found('knee', 'left', 'swelling', late)],
    ['opposite'],
  ],
  [
    'found, denied, found again is asked of the last change only',
    [
      found('knee', 'left', 'swelling'),
      denied('knee', 'left', 'swelling', late),
      found('knee', 'left', 'swelling', { at: minute(9) }),
    ],
    ['opposite'],
  ],
  [
    'denied left, found right',
    [denied('knee', 'left', 'swelling'), found('knee', 'right', 'swelling', late)],
    [],
  ],
  ['another finding', [denied('knee', 'left', 'swelling'), found('knee', 'left', 'tenderness', late)], []],
  [
    'another part',
    [
      denied('forearm', 'left', 'swelling', {}, { part: ['distal'] }),
      found('forearm', 'left', 'swelling', late, { part: ['proximal'] }),
    ],
    [],
  ],
  [
    'another level',
    [
      denied('cervical-spine', null, 'tenderness', {}, { level: 'C2' }),
      found('cervical-spine', null, 'tenderness', late, { level: 'C5' }),
    ],
    [],
  ],
  [
    'the chest denied, its left found',
    [denied('chest', null, 'tenderness'), found('chest', 'left', 'tenderness', late)],
    ['opposite'],
  ],
  [
    'one of them struck',
    [denied('knee', 'left', 'swelling', { state: 'struck' }), found('knee', 'left', 'swelling', late)],
    [],
  ],
  [
    'motion intact, then not',
    [csm('foot', 'left', 'motion', true), csm('foot', 'left', 'motion', false, late)],
    ['opposite'],
  ],
  [
    'motion intact, sensation not',
    [csm('foot', 'left', 'motion', true), csm('foot', 'left', 'sensation', false, late)],
    [],
  ],
  [
    'sensation intact, then numb',
    [csm('foot', 'left', 'sensation', true), found('foot', 'left', 'numbness', late)],
    ['opposite'],
  ],
  [
    'sensation intact on the right, numb on the left',
    [csm('foot', 'right', 'sensation', true), found('foot', 'left', 'numbness', late)],
    [],
  ],
  [
    'a weak foot whose sensation is intact',
    [csm('foot', 'left', 'sensation', true), found('foot', 'left', 'weakness', late)],
    [],
  ],
  [
    'nothing found, and a finding',
    [denied('jaw', null, 'abnormality'), found('jaw', null, 'swelling', late)],
    ['nothing-and-something'],
  ],
  [
    'nothing found, and a denial',
    [denied('jaw', null, 'abnormality'), denied('jaw', null, 'swelling', late)],
    [],
  ],
  [
    'left elbow and right forearm in one sentence',
    [found('elbow', 'left', 'pain'), found('forearm', 'right', 'pain')],
    ['side-jump'],
  ],
  [
    'the same in two sentences',
    [found('elbow', 'left', 'pain'), found('forearm', 'right', 'pain', late)],
    [],
  ],
  ['a comparison of both sides', [found('elbow', 'left', 'pain'), denied('elbow', 'right', 'pain')], []],
  [
    'a hand on one side and its fingers on the other',
    [csm('hand', 'left', 'motion', true), found('fingers', 'right', 'weakness')],
    [],
  ],
  ['an arm and a leg in one sentence', [found('elbow', 'left', 'pain'), found('knee', 'right', 'pain')], []],
  [
    'equal pupils of two sizes',
    [vital({ vital: 'pupils', value: { equal: true, leftMm: 3, rightMm: 5 } })],
    ['not-equal'],
  ],
  [
    'equal pupils of one size',
    [vital({ vital: 'pupils', value: { equal: true, leftMm: 3, rightMm: 3 } })],
    [],
  ],
  ['a pulse 50 off within minutes', [pulse(70, 0), pulse(120, 5)], ['far-from-last']],
  ['a pulse 49 off', [pulse(70, 0), pulse(119, 5)], []],
  ['a pulse 50 off after half an hour', [pulse(70, 0), pulse(120, 30)], []],
  ['two pulses at once', [pulse(70, 0), pulse(72, 0)], ['two-values-at-once']],
  ['the same pulse twice at once', [pulse(70, 0), pulse(70, 0)], []],
  ['98.6 degrees', [celsius(98.6)], ['unit']],
  ['37 degrees', [celsius(37)], []],
  ['glucose 5.6', [vital({ vital: 'glucose', value: { mgPerDl: 5.6 } })], ['unit']],
  ['a plausible saturation and pressure', [saturation(97, false), pressure(118, 76)], []],
  [
    'a sum that does not add up',
    [vital({ vital: 'gcs', value: { eye: 4, verbal: 5, motor: 6, total: 14 } })],
    ['sum'],
  ],
  [
    'a hand examined beyond an amputated forearm',
    [found('forearm', 'left', 'amputation'), ...csmAllFour(5).slice(0, 1)],
    ['amputated'],
  ],
  [
    'the other hand',
    [found('forearm', 'left', 'amputation'), csm('hand', 'right', 'motion', true, late)],
    [],
  ],
  [
    'bleeding at the stump',
    [found('forearm', 'left', 'amputation'), found('forearm', 'left', 'bleeding', late)],
    [],
  ],
  [
    'a splint on the other side than the finding',
    [found('wrist', 'right', 'deformity'), cared('splint', 'wrist', 'left', 5)],
    ['care-without-finding'],
  ],
  ['a splint where nothing was found', [cared('splint', 'wrist', 'left', 5)], ['care-without-finding']],
  [
    'a splint on the side of the finding',
    [found('wrist', 'left', 'deformity'), cared('splint', 'forearm', 'left', 5)],
    [],
  ],
  [
    'a tourniquet on the left with a wound on the right and a bruise on the left',
    [
      found('thigh', 'right', 'laceration'),
      found('knee', 'left', 'contusion', late),
      cared('tourniquet', 'thigh', 'left', 5),
    ],
    ['care-without-finding'],
  ],
  [
    'a tourniquet for an open fracture',
    [
      found('lower-leg', 'right', 'abnormality', {}, { quality: ['open-fracture'] }),
      cared('tourniquet', 'thigh', 'right', 5),
    ],
    [],
  ],
  [
    'a lost hand that is checked',
    [found('hand', 'left', 'amputation'), csm('hand', 'left', 'motion', true, late)],
    ['amputated'],
  ],
  [
    'a lost hand that bleeds',
    [found('hand', 'left', 'amputation'), found('hand', 'left', 'bleeding', late)],
    [],
  ],
  [
    'a tourniquet told to be on since the day before',
    [
      found('thigh', 'left', 'bleeding'),
      { ...cared('tourniquet', 'thigh', 'left', -600), heardAt: minute(5) },
    ],
    ['time-far-back'],
  ],
  ['oxygen', [cared('oxygen', 'face', null, 5)], []],
  [
    'a tourniquet on the thigh for the foot',
    [found('foot', 'left', 'bleeding'), cared('tourniquet', 'thigh', 'left', 5)],
    [],
  ],
];

describe('conflicts', () => {
  it.each(rows)('%s', (_, entries, expected) => {
    expect(asked(entries)).toEqual(expected);
  });

  it('each ask one short question and name their entries', () => {
    const entries = rows.flatMap(([, each]) => each);
    const { conflicts } = reckon(entries, { now: clock(60) });
    expect(conflicts.length).toBeGreaterThan(10);
    for (const conflict of conflicts) {
      expect(conflict.question.endsWith('?')).toBe(true);
      expect(conflict.question.split('?').length).toBe(2);
      expect(conflict.evidence.length).toBeGreaterThan(0);
    }
  });
});
