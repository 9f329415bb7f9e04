// Several sets of signs in one breath, and several figures of one sign: each has the time that it was said with. All talk is
// invented; it is heard at 14:02.

import { describe, expect, it } from 'vitest';
import { BEGINS, read, statementsOf } from '../read.ts';

type Timed = readonly [talk: string, means: readonly string[], minutesBefore: readonly (number | null)[]];

const minutesBefore = (talk: string) =>
  statementsOf(talk).map(({ at }) => (at === undefined ? null : Math.round((BEGINS - at) / 60_000)));

const check = (rows: readonly Timed[]): void =>
  it.each(rows)('%s', (talk, means, minutes) => {
    expect(read(talk)).toEqual(means);
    expect(minutesBefore(talk)).toEqual(minutes);
  });

const PULSE_AND_RESPS = ['pulse rate=112', 'respirations rate=26', 'pulse rate=98', 'respirations rate=20'];

describe('a time that heads a run of signs', () => {
  check([
    [
      'signs for her at thirteen forty pulse one twelve resps twenty six then at thirteen fifty pulse ninety eight resps twenty',
      PULSE_AND_RESPS,
      [22, 22, 12, 12],
    ],
    [
      'at thirteen forty pulse one twelve resps twenty six at thirteen fifty pulse ninety eight resps twenty',
      PULSE_AND_RESPS,
      [22, 22, 12, 12],
    ],
    ['at 13:40, pulse 112, resps 26, at 13:50, pulse 98, resps 20', PULSE_AND_RESPS, [22, 22, 12, 12]],
    [
      'thirteen forty pulse one twelve resps twenty six thirteen fifty pulse ninety eight resps twenty',
      PULSE_AND_RESPS,
      [22, 22, 12, 12],
    ],
    [
      'thirteen forty, sats ninety, resps twelve',
      ['oxygen-saturation percent=90', 'respirations rate=12'],
      [22, 22],
    ],
    [
      'quarter to two sats ninety resps twelve',
      ['oxygen-saturation percent=90', 'respirations rate=12'],
      [17, 17],
    ],
    ['third set thirteen forty sats ninety', ['oxygen-saturation percent=90'], [22]],
    ['13:40: pulse 112, resps 26. 13:50: pulse 98, resps 20.', PULSE_AND_RESPS, [22, 22, 12, 12]],
    [
      'at thirteen forty fentanyl fifty micrograms pulse ninety eight at thirteen fifty pulse eighty eight',
      ['pulse rate=98', 'medication text=fentanyl fifty micrograms', 'pulse rate=88'],
      [22, 22, 12],
    ],
    [
      'thirteen forty fentanyl fifty micrograms thirteen fifty pulse eighty eight',
      ['pulse rate=88', 'medication text=fentanyl fifty micrograms'],
      [12, 22],
    ],
    // The time behind a set is that of the set, as ever; one that closes the last sign is its own.
    [
      'pulse one twelve resps twenty six at thirteen forty pulse ninety eight resps twenty at thirteen fifty',
      PULSE_AND_RESPS,
      [22, 22, 12, 12],
    ],
    [
      'at thirteen forty pulse eighty, resps sixteen at thirteen fifty',
      ['pulse rate=80', 'respirations rate=16'],
      [22, 12],
    ],
    [
      'at thirteen forty pulse eighty splint on the left wrist at thirteen fifty',
      ['pulse rate=80', 'splint left wrist'],
      [22, 12],
    ],
    [
      'she fell at thirteen forty pulse one twelve and at thirteen fifty pulse ninety',
      ['mechanism: she fell at thirteen forty', 'pulse rate=112', 'pulse rate=90'],
      [22, null, 12],
    ],
  ]);
});

describe('two numbers that are no time', () => {
  check([
    ['one twenty pulse ninety', ['pulse rate=90', 'note: one twenty'], [null, null]],
    ['resps ten to five pulse ninety', ['pulse rate=90', 'note: resps ten to five'], [null, null]],
    [
      'what is the glucose | thirteen ten pulse ninety',
      ['pulse rate=90', 'note: thirteen ten'],
      [null, null],
    ],
    ['ten to twelve breaths', ['note: ten to twelve breaths'], [null]],
    // Nobody can tell where the time ends.
    ['pulse at thirteen thirty one fifteen', ['note: pulse at thirteen thirty one fifteen'], [null]],
    ['at thirteen twenty one ten over seventy', ['note: at thirteen twenty one ten over seventy'], [null]],
    ['at thirteen forty one hundred over sixty', ['note: at thirteen forty one hundred over sixty'], [null]],
  ]);
});

describe('several figures of one sign, each with its time', () => {
  check([
    [
      'pressures at thirteen thirty ninety over fifty at thirteen forty ninety six over sixty and at thirteen fifty b p one ten over sixty',
      [
        'blood-pressure systolic=90 diastolic=50',
        'blood-pressure systolic=96 diastolic=60',
        'blood-pressure systolic=110 diastolic=60',
      ],
      [32, 22, 12],
    ],
    [
      "coma score was nine at thirteen forty and it's eleven at thirteen fifty",
      ['gcs total=9', 'gcs total=11'],
      [22, 12],
    ],
    [
      'temperature thirty three point one at thirteen forty then thirty four at thirteen fifty',
      ['temperature celsius=33.1', 'temperature celsius=34'],
      [22, 12],
    ],
    [
      'sats were eighty eight at thirteen forty ninety one percent at thirteen fifty',
      ['oxygen-saturation percent=88', 'oxygen-saturation percent=91'],
      [22, 12],
    ],
    ['resps at thirteen forty were thirty', ['respirations rate=30'], [22]],
    ['pulse at one thirty was one twenty', ['pulse rate=120'], [32]],
    [
      "resps were twenty eight ten minutes ago and they're twenty now",
      ['respirations rate=28', 'respirations rate=20'],
      [10, null],
    ],
    [
      "pulse was one forty ten minutes ago | it's one twelve now",
      ['pulse rate=140', 'pulse rate=112'],
      [10, null],
    ],
    [
      "sats eighty nine | and they're ninety five now",
      ['oxygen-saturation percent=89', 'oxygen-saturation percent=95'],
      [null, null],
    ],
    [
      'twenty minutes ago his pulse was one forty and ten minutes ago it was one twenty and now it is ninety eight',
      ['pulse rate=140', 'pulse rate=120', 'pulse rate=98'],
      [20, 10, null],
    ],
    [
      'pressure was eighty over forty ten minutes ago and it is one hundred over sixty now',
      ['blood-pressure systolic=80 diastolic=40', 'blood-pressure systolic=100 diastolic=60'],
      [10, null],
    ],
    [
      'pain score nine at thirteen forty and four at thirteen fifty',
      ['pain-score score=9', 'pain-score score=4'],
      [22, 12],
    ],
    [
      'sats eighty four on air at thirteen forty ninety three on six litres at thirteen fifty',
      ['oxygen-saturation percent=84 onOxygen=false', 'oxygen-saturation percent=93 onOxygen=true'],
      [22, 12],
    ],
    // Must not: so late it is, a number of something else, something said between, and what is no number of the sign.
    ["pulse eighty | it's two oh two now", ['pulse rate=80', "note: it's two oh two now"], [null, null]],
    ["pulse eighty | it's nine now", ['pulse rate=80', "note: it's nine now"], [null, null]],
    [
      "pulse eighty | left wrist swollen | it's ninety now",
      ['pulse rate=80', 'swelling left wrist', "note: it's ninety now"],
      [null, null, null],
    ],
    [
      'pulse eighty at thirteen forty and two puffs at thirteen fifty',
      ['pulse rate=80', 'note: two puffs at thirteen fifty'],
      [22, null],
    ],
  ]);
});

describe('half and the hour', () => {
  check([
    ['at half one pulse eighty resps twelve', ['pulse rate=80', 'respirations rate=12'], [32, 32]],
    ['half one pulse eighty', ['pulse rate=80'], [32]],
    ['fell at half twelve', ['mechanism: fell at half twelve'], [92]],
    // Must not: an amount.
    ['gave half one tablets', ['note: gave half one tablets'], [null]],
    ['pain for half three hours', ['note: pain for half three hours'], [null]],
  ]);
});
