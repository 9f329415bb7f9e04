// What was denied or affirmed and is taken back a breath later, and what is explained away. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const told = (talk: string, topic: string) =>
  standing(talk).flatMap((one) => (one.kind === 'history' && one.topic === topic ? [one] : []));

describe('a denial of history that is taken back', () => {
  it.each([
    ['any allergies | nope | oh hang on, yes, latex', 'allergies', 'latex'],
    ['any allergies | no | well, elastoplast actually', 'allergies', 'elastoplast'],
    ['no allergies, wait, codeine', 'allergies', 'codeine'],
    ['does he take any tablets | no | actually he takes bisoprolol', 'medications', 'bisoprolol'],
    ['any medical problems | none | oh wait, she is epileptic', 'past-history', 'epileptic'],
  ] as const)('leaves %s told', (talk, topic, text) => {
    const [one, ...others] = told(talk, topic);
    expect(others).toEqual([]);
    expect(one?.present).not.toBe(false);
    expect(one?.text).toContain(text);
  });

  it('waits for what it is', () => {
    expect(
      told('any allergies | no | actually yes | elastoplast', 'allergies').map(({ text }) => text),
    ).toEqual(['actually yes', 'elastoplast']);
  });

  it.each(['any allergies | no | sorry I missed that', 'any allergies | no | hang on, let me write that'])(
    'stands in %s',
    (talk) => expect(told(talk, 'allergies').map(({ present }) => present)).toEqual([false]),
  );
});

describe('a finding whose answer is turned', () => {
  it.each([
    ['any pain in the belly | no | actually yeah a little', [['abdomen', null, 'pain', true]]],
    ['is the right elbow sore | yes | wait, no', [['elbow', 'right', 'pain', false]]],
    ['no bruising over the right hip | oh wait, yes there is', [['hip', 'right', 'contusion', true]]],
    [
      'any tingling in your feet | no | sorry, yes, in the right one',
      [
        ['foot', 'right', 'tingling', true],
        ['foot', 'left', 'tingling', false],
      ],
    ],
  ] as const)('is the other way round in %s', (talk, entries) => {
    expect(found(talk)).toEqual(entries);
  });

  it.each([
    'right thigh, no swelling | wait, yes, his pulse is eighty',
    'does the right shin hurt | no | and the left | yes, sorry, I will stop',
    'no swelling of the left foot | how is the pulse there | actually yes',
  ])('stands where something else is meant: %s', (talk) => {
    expect(found(talk)[0]?.[3]).toBe(false);
  });

  it('is asked about where nobody was asked', () => {
    const [one] = standing('left ribs tender | actually no');
    expect(one).toMatchObject({ kind: 'finding', present: false });
    expect(one?.doubt).toHaveLength(1);
  });
});

describe('a denial behind "sorry"', () => {
  it.each([
    ['right hip pain | sorry no swelling', false],
    ['right hip pain, sorry, swelling', true],
  ] as const)('of %s', (talk, present) => {
    expect(standing(talk).find((one) => one.kind === 'finding' && one.finding === 'swelling')).toMatchObject({
      present,
    });
  });
});

describe('what is explained away', () => {
  it.each(['cut over the right brow | no that is only ketchup', 'pupils unequal | oh it was just the torch'])(
    'stands and is asked about: %s',
    (talk) => {
      const [one, ...others] = standing(talk).filter(({ kind }) => kind !== 'note' && kind !== 'visit');
      expect(others).toEqual([]);
      expect(one?.doubt?.join(' ')).toContain('Taken back by');
    },
  );
});

describe('what was said and is found otherwise in the same breath', () => {
  it.each([
    ['no bruising on the right foot. Wait, he winced. There is bruising.', 'contusion', [true]],
    ['no tenderness at the left elbow, hang on, there is tenderness there', 'tenderness', [true]],
    ['no pain at the left elbow at rest, and pain when he lifts it', 'pain', [true]],
  ] as const)('stands once: %s', (talk, finding, present) => {
    const same = standing(talk).flatMap((one) =>
      one.kind === 'finding' && one.finding === finding ? [one.present] : [],
    );
    expect(same).toEqual(present);
  });

  it('stands once where it is a check of a limb', () => {
    const checks = standing('left hand he cannot feel it no wait he can, feels it fine');
    expect(checks.map((one) => one.kind === 'csm' && [one.side, one.aspect, one.present])).toEqual([
      ['left', 'sensation', true],
    ]);
  });
});

describe('words that take back themselves', () => {
  it('strike nothing that was said before them', () => {
    const talk = "splint on the right forearm | that's the paint on my left glove ignore that";
    expect(standing(talk).map(({ kind }) => kind)).toEqual(['care', 'note']);
  });

  it('strike the last thing said where they name nothing themselves', () => {
    expect(standing('splint on the right forearm | scratch that').map(({ kind }) => kind)).toEqual([]);
  });
});

describe('what there is one of', () => {
  it.each([
    ["She's 31. Sorry, 13 years old.", 13],
    ['he is fifty four | sorry, forty five years old', 45],
  ])('is told anew: %s', (talk, years) => {
    expect(told(talk, 'age').map((one) => one.years)).toEqual([years]);
  });
});

describe('a side turned by the partner', () => {
  it('turns it, whoever is spoken to', () => {
    expect(found("Right shin's swollen. | No, the left, Moana, turn him over.")).toEqual([
      ['lower-leg', 'left', 'swelling', true],
    ]);
  });

  it('turns what was told of that place before other things', () => {
    expect(found('right elbow deformity | left knee abrasion | correction left elbow')).toEqual([
      ['knee', 'left', 'abrasion', true],
      ['elbow', 'left', 'deformity', true],
    ]);
  });
});

describe('two questions of one line', () => {
  it('have each their own answer', () => {
    expect(found('Does your back hurt? No. Does your hip hurt? Yes, yes.')).toEqual([
      ['back', null, 'pain', false],
      ['hip', null, 'pain', true],
    ]);
  });
});

const values = (talk: string) => standing(talk).flatMap((one) => (one.kind === 'vital' ? [one.value] : []));

describe('a sign put right', () => {
  it.each([
    ['BP 142 on 90, sorry, I misread that, 124 on 90', [{ systolic: 124, diastolic: 90 }]],
    ['GCS twelve. Sorry, thirteen, eyes open to voice.', [{ total: 13 }, { avpu: 'V' }]],
    ['pulse is sixteen | negative pulse sixty', [{ rate: 60 }]],
    [
      'left pupil four right pupil two no other way round left two right four',
      [{ leftMm: 2, rightMm: 4, equal: false }],
    ],
    ["sugar's ninety, scratch that, one ninety, it was upside down", [{ mgPerDl: 190 }]],
  ])('stands once: %s', (talk, signs) => expect(values(talk)).toEqual(signs));
});

describe('a reading that only its end makes a question', () => {
  it('is told, and asked about', () => {
    const [one] = standing("pulse is eighty eight, nice and steady, isn't it?");
    expect(one).toMatchObject({ kind: 'vital', value: { rate: 88 } });
    expect(one?.doubt).toHaveLength(1);
  });

  it('is told where the partner is asked whether it was heard', () => {
    const [one] = standing('sats ninety one, okay?');
    expect(one).toMatchObject({ kind: 'vital', value: { percent: 91 } });
    expect(one?.doubt ?? []).toEqual([]);
  });

  it('is none where it was asked', () => expect(standing('is his pulse ninety?')).toEqual([]));
});

describe('a sign read anew behind a "no"', () => {
  it('takes the place of the one before', () => {
    const signs = standing('pressure one thirty over ninety | no, pressure one thirteen over ninety');
    expect(signs).toHaveLength(1);
    expect(signs[0]).toMatchObject({ value: { systolic: 113, diastolic: 90 } });
  });
});
