// Figures said twice, before their sign, with a "now" or under a time at the head, and instruments that slip. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { standing } from '../standing.ts';

const signs = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'vital' ? [[one.vital, Object.values(one.value)[0]]] : []));

const times = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'vital' ? [`${one.vital} ${one.at.slice(11, 16)}`] : []));

describe('a number that is said again in other words', () => {
  it.each([
    ['heart rate one forty one four zero and weak', [['pulse', 140]]],
    ['pulse sixty eight six eight', [['pulse', 68]]],
    ['temp thirty five point six thirty five six', [['temperature', 35.6]]],
    ['sats ninety one ninety one percent', [['oxygen-saturation', 91]]],
    ['pressure one ten over seventy one one zero over seven zero', [['blood-pressure', 110]]],
    ['resps one eight, eighteen, shallow', [['respirations', 18]]],
  ] as const)('is one in %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it.each([
    [
      'pulse ninety, ninety percent on air',
      [
        ['pulse', 90],
        ['oxygen-saturation', 90],
      ],
    ],
    [
      'pulse ninety ninety percent on air',
      [
        ['pulse', 90],
        ['oxygen-saturation', 90],
      ],
    ],
    [
      'pulse sixty sixty over palp',
      [
        ['pulse', 60],
        ['blood-pressure', 60],
      ],
    ],
    [
      'pulse one twenty, one twenty over eighty',
      [
        ['pulse', 120],
        ['blood-pressure', 120],
      ],
    ],
  ] as const)('is two in %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it('is not taken for a left and a right one', () => {
    const [pupils] = standing('pupils three three');
    expect(pupils).toMatchObject({ value: { leftMm: 3, rightMm: 3 } });
  });

  it('keeps a time of twice the same', () =>
    expect(times('at twelve twelve pulse ninety')).toEqual(['pulse 12:12']));
});

describe('a figure before its sign', () => {
  it.each([
    ["I've got one forty on the pulse", [['pulse', 140]]],
    ['twenty six for the resps', [['respirations', 26]]],
    ['one ten on the pulse, weak', [['pulse', 110]]],
    ['ninety three on the pulse ox', [['oxygen-saturation', 93]]],
    ['heart rate ninety two on the pulse ox', [['pulse', 92]]],
  ] as const)('is read in %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it.each([
    'two of us on the pulse',
    'got a hand on the pulse',
    'at two thirty on the pulse there was a skip',
    'one ten on the pulse ox',
  ])('is none in %s', (talk) => expect(signs(talk)).toEqual([]));
});

describe('a figure with a "now" behind one of then', () => {
  it.each([
    ["pain was seven out of ten before the morphine now it's two out of ten", [['pain-score', 2]]],
    ["pain was seven before the morphine, now it's a two", [['pain-score', 2]]],
    ['pulse was one ten before the ketamine now ninety', [['pulse', 90]]],
  ] as const)("is today's in %s", (talk, means) => expect(signs(talk)).toEqual(means));

  it.each([
    'pain was seven before the morphine',
    "pain was seven before the morphine, now it's two hours later",
    'pain was seven, now two people are needed',
    "pain in the left wrist was seven, now it's three",
  ])('is none in %s', (talk) => expect(signs(talk)).toEqual([]));
});

describe('a time at the head of a run', () => {
  it.each([
    'right, thirteen fifty: pulse 110, resps 20',
    'okay thirteen fifty, pulse 110, resps 20',
    'okay, so, thirteen fifty, pulse 110, resps 20',
  ])('is of all of it: %s', (talk) => expect(times(talk)).toEqual(['pulse 13:50', 'respirations 13:50']));

  it.each([
    'right, one twenty: resps 20',
    'right, one twenty, resps 20',
    "what's the pressure | right, eleven fifteen, resps 20",
  ])('may be a figure in %s', (talk) => expect(times(talk).at(-1)).toMatch(/14:0/));
});

describe('an instrument that slips', () => {
  it.each([
    "pressure ninety over forty, cuff's slipped",
    'the tourniquet slipped down',
    'the sats probe fell off',
  ])('hurts nobody: %s', (talk) =>
    expect(standing(talk).filter(({ kind }) => kind === 'history')).toEqual([]),
  );

  it.each(['he slipped on the ice', 'left wrist in a splint, fell on the ice'])(
    'is not who slips in %s',
    (talk) => expect(standing(talk).filter(({ kind }) => kind === 'history')).toHaveLength(1),
  );
});

describe("a sign's name as a sentence of its own", () => {
  it.each([
    ['Pupils. Unequal. Left five, right three.', { equal: false, leftMm: 5, rightMm: 3 }],
    ['Skin. Grey. Cold. Clammy.', { color: 'ashen', temperature: 'cold', moisture: 'clammy' }],
    ['Pulse. One ten. Irregular.', { rate: 110, quality: ['irregular'] }],
    ['Right, next. Sats. Ninety one. On air.', { percent: 91, onOxygen: false }],
  ])('heads the short ones behind it: %s', (talk, value) => {
    const [one, ...others] = standing(talk).filter(({ kind }) => kind === 'vital');
    expect(one).toMatchObject({ value });
    expect(others).toEqual([]);
  });

  it.each([
    'Pulse. Send me two more people.',
    'Pulse. Left wrist is swollen.',
    'Pulse. Twenty minutes till the boat comes.',
    'Left foot. Skin. Cool.',
  ])('heads nothing else: %s', (talk) => expect(signs(talk)).toEqual([]));
});
