// Corrections that must leave what was meant, and not what was put right: by a name called, by "the" thing told of, of one of two, of a sign
// among others. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const signs = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'vital' ? [[one.vital, one.value]] : []));

describe('a correction', () => {
  it.each([
    ['bruise on the right heel | No Tamsin, the left heel.', [['heel', 'left', 'contusion', true]]],
    ['right thumb bent out of shape | No, Kofi, left thumb.', [['thumb', 'left', 'deformity', true]]],
    [
      'left thigh grazed | no, the graze is on the right thigh, left thigh has no graze',
      [
        ['thigh', 'right', 'abrasion', true],
        ['thigh', 'left', 'abrasion', false],
      ],
    ],
    ['left calf has a sting, no, your other left, the right calf', [['lower-leg', 'right', 'sting', true]]],
    ['right hand burned | no your other right the left hand', [['hand', 'left', 'burn', true]]],
    [
      'left thigh grazed | right thigh fine | no, the graze is on the right thigh, nothing on the left',
      [
        ['thigh', 'right', 'abnormality', false],
        ['thigh', 'right', 'abrasion', true],
        ['thigh', 'left', 'abnormality', false],
      ],
    ],
    ["right ear cut | no, the cut's on the left ear", [['ear', 'left', 'laceration', true]]],
    [
      'left shin no swelling there is a burn correction it is the left ankle there is the burn',
      [
        ['lower-leg', 'left', 'swelling', false],
        ['ankle', 'left', 'burn', true],
      ],
    ],
    [
      "left wrist there's a bite correction it's the left thumb that's where the bite is",
      [['thumb', 'left', 'bite', true]],
    ],
    [
      "right calf there's a rash correction it's the right foot there's the rash and the left foot has no rash",
      [
        ['foot', 'right', 'rash', true],
        ['foot', 'left', 'rash', false],
      ],
    ],
    ['both ankles swollen no wait only the left ankle is swollen', [['ankle', 'left', 'swelling', true]]],
    [
      'right wrist bent out of shape | hang on it is the left wrist, right wrist is fine',
      [
        ['wrist', 'left', 'deformity', true],
        ['wrist', 'right', 'abnormality', false],
      ],
    ],
    [
      'left hip sore | no the right, the left is fine',
      [
        ['hip', 'right', 'pain', true],
        ['hip', 'left', 'abnormality', false],
      ],
    ],
    ['both hips hurt | no, just the right hip hurts', [['hip', 'right', 'pain', true]]],
  ] as const)('of a place leaves what was meant: %s', (talk, entries) =>
    expect(found(talk)).toEqual(entries),
  );

  it.each([
    ['right shin swollen | No Ken, the left shin is fine', ['lower-leg', 'right', 'swelling', true]],
    ['both knees hurt | just the left knee hurts when I press', ['knee', 'both', 'pain', true]],
    ['left wrist swollen | No oedema, right wrist.', ['wrist', 'left', 'swelling', true]],
    [
      'left knee swollen right knee swollen | no the swelling is on the left knee',
      ['knee', 'right', 'swelling', true],
    ],
  ] as const)('takes nothing back in %s', (talk, entry) => expect(found(talk)).toContainEqual(entry));

  it.each([
    ['right thigh fine | no the bruise is on the right hip', ['hip', 'right', 'contusion', true]],
    ['swelling left ankle | no the pain is in the right foot', ['foot', 'right', 'pain', true]],
  ] as const)('denies nothing that it names with its "the": %s', (talk, entry) =>
    expect(found(talk)).toContainEqual(entry),
  );
});

describe('a number of things behind a "no"', () => {
  it.each([
    ['three cuts on the left arm | no, four cuts', [4]],
    ['two bruises on the back | no, two grazes', [2, 2]],
    ['three cuts on the left arm | no, two cuts on the right leg', [3, 2]],
  ] as const)('is there: %s', (talk, counts) => {
    const said = standing(talk).flatMap((one) => (one.kind === 'finding' ? [one] : []));
    expect(said.map(({ count }) => count)).toEqual(counts);
    expect(said.every(({ present }) => present)).toBe(true);
  });
});

describe('the same finding at another place behind a "sorry"', () => {
  it('is asked about', () => {
    const [entry] = standing('left shin cut | sorry right knee cut');
    expect(entry).toMatchObject({ site: 'knee', doubt: [expect.stringContaining('instead')] });
  });

  it('is there besides where it says so', () => {
    expect(found('left shin cut | sorry, right knee cut as well')).toHaveLength(2);
  });
});

describe('a sign put right', () => {
  it.each([
    [
      'pulse seventy resps twelve | that pulse, make that seventy six',
      [
        ['respirations', { rate: 12 }],
        ['pulse', { rate: 76 }],
      ],
    ],
    [
      'pulse seventy resps twelve | sorry that pulse make that seventy six',
      [
        ['respirations', { rate: 12 }],
        ['pulse', { rate: 76 }],
      ],
    ],
    ['resps twelve. | Strike that, he was talking. It was fourteen.', [['respirations', { rate: 14 }]]],
    ['Pulse is one ten. | Scratch that, I lost count. It is one eighteen.', [['pulse', { rate: 118 }]]],
    [
      'gcs eyes two verbal three motor five so ten | make the motor six so it is eleven',
      [['gcs', { eye: 2, verbal: 3, motor: 6, total: 11 }]],
    ],
    [
      'pulse seventy bp one ten over sixty | no the pulse is eighty',
      [
        ['blood-pressure', { systolic: 110, diastolic: 60 }],
        ['pulse', { rate: 80 }],
      ],
    ],
    [
      'bp one ten over sixty | I misheard, bp is one forty over sixty',
      [['blood-pressure', { systolic: 140, diastolic: 60 }]],
    ],
  ] as const)('is the one that was named: %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it.each([
    'Pulse is ninety. | Scratch that, he moved. It is a big knife.',
    'Pulse is ninety. | Scratch that, he moved. It is two o’clock.',
  ])('is none in %s', (talk) => expect(signs(talk)).toEqual([]));

  it.each([
    ['cap refill four seconds left foot | make that two', true],
    ['cap refill two seconds right hand | correction four seconds', false],
  ])('says anew whether a limb is well: %s', (talk, present) =>
    expect(standing(talk)).toMatchObject([{ kind: 'csm', present }]),
  );

  it('keeps its figure where only how it feels is told', () => {
    expect(signs('pulse seventy bp one ten over sixty | no the pulse is strong')).toContainEqual([
      'pulse',
      { rate: 70 },
    ]);
  });

  it('asks where the parts of a scale do not make the sum that was said', () => {
    const doubts = standing(
      'gcs eyes two verbal three motor five so ten | make the motor six so it is twelve',
    );
    expect(doubts).toHaveLength(1);
  });
});

describe('a strike of the other one', () => {
  it('leaves what was told in its own breath', () => {
    const feels = standing(
      'no feeling in the left foot | hold on, she does have feeling in the left foot, strike that other one',
    ).flatMap((one) => (one.kind === 'csm' ? [[one.site, one.side, one.present]] : []));
    expect(feels).toEqual([['foot', 'left', true]]);
  });

  it('strikes nothing where nobody knows which', () => {
    expect(found('left knee cut | right knee cut | strike that other one')).toHaveLength(2);
  });
});
