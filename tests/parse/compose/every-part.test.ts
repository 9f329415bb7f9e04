// Denials of standard English that say the opposite, or deny without a "no": "there isn't a part of it that isn't sore", "divil a bit of
// swelling". All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

describe('two denials of any part', () => {
  it.each([
    ["there isn't a part of that left foot that isn't sore", ['foot', 'left', 'pain', true]],
    ["there's not an inch of his back that isn't bruised", ['back', null, 'contusion', true]],
    ['there is no part of her right shin that is not swollen', ['lower-leg', 'right', 'swelling', true]],
    ["there's nowhere on that left leg that doesn't hurt", ['leg', 'left', 'pain', true]],
  ] as const)('say that it is so: %s', (talk, entry) => expect(found(talk)).toEqual([entry]));

  it.each([
    ["there isn't a part of that right hand that is tender", ['hand', 'right', 'tenderness', false]],
    ['no part of the right hand is tender', ['hand', 'right', 'tenderness', false]],
    ['no bit of bruising there and the knee that is not swollen', ['knee', null, 'swelling', false]],
  ] as const)('do not in %s', (talk, entry) => expect(found(talk)).toContainEqual(entry));
});

describe('a denial without a "no"', () => {
  it.each([
    ['divil a bit of bruising on the left shin', ['lower-leg', 'left', 'contusion', false]],
    ["there's not a scrap of swelling in the right knee", ['knee', 'right', 'swelling', false]],
    ['not a trace of bruising round the left eye', ['eye', 'left', 'contusion', false]],
  ] as const)('denies: %s', (talk, entry) => expect(found(talk)).toEqual([entry]));

  it('neither denies nor states where it leaves something', () => {
    expect(found("there's hardly any swelling in the left knee")).toEqual([]);
    expect(standing("there's hardly any swelling in the left knee").map(({ kind }) => kind)).toEqual([
      'note',
    ]);
  });
});

describe('"cut the" behind what was found', () => {
  it.each([
    [
      'the left shin is bruised and cut the right shin is not bruised',
      [
        ['lower-leg', 'left', 'contusion', true],
        ['lower-leg', 'left', 'laceration', true],
        ['lower-leg', 'right', 'contusion', false],
      ],
    ],
    [
      'the left ear is cut the right ear is fine',
      [
        ['ear', 'left', 'laceration', true],
        ['ear', 'right', 'abnormality', false],
      ],
    ],
  ] as const)('is a cut before another place: %s', (talk, entries) => expect(found(talk)).toEqual(entries));

  it.each([
    'the left knee is swollen and cut the trousers off',
    'the left knee is swollen and cut the right trouser leg',
  ])('is what is done in %s', (talk) => expect(found(talk)).toEqual([['knee', 'left', 'swelling', true]]));
});

describe('what a finding is not', () => {
  it.each(["cut on the left palm it isn't deep", "bruise on the hip it's not severe"])(
    'is no quality of it: %s',
    (talk) => {
      const [entry, ...others] = standing(talk);
      expect(entry).not.toHaveProperty('quality');
      expect(entry).not.toHaveProperty('severity');
      expect(others.map(({ kind }) => kind)).toEqual(['note']);
    },
  );
});
