// "Any pain?" "Not in the leg, in the foot": what stands past the pause is no second denial. All talk is invented.

import { describe, expect, test } from 'vitest';
import { found, standing } from '../standing.ts';

describe('a place past the pause behind a denied one', () => {
  test.each([
    ['any pain anywhere? | not in the hip, in the shin', 'hip', 'lower-leg'],
    ['any numbness? | not my fingers, my toes', 'fingers', 'toes'],
    ['does anything hurt? | not on the cheek, on the jaw', 'cheek', 'jaw'],
  ])('%s: is where it is, and asked about', (talk, denied, there) => {
    const finding = found(talk)[0]?.[2];
    expect(found(talk)).toEqual([
      [denied, null, finding, false],
      [there, null, finding, true],
    ]);
    expect(standing(talk).at(-1)?.doubt).toContain('Was it said to be there instead?');
    expect(standing(talk).at(-2)?.doubt ?? []).toEqual([]);
  });

  test.each([
    'any pain? | not in the hip or in the shin',
    'any pain? | not my hip or my shin',
    'any pain? | not in the hip, not in the shin',
  ])('%s: is denied too', (talk) =>
    expect(found(talk)).toEqual([
      ['hip', null, 'pain', false],
      ['lower-leg', null, 'pain', false],
    ]),
  );

  test('of three places none is entered, and all are kept as said', () => {
    const talk = 'any pain? | not my hip, my shin, my heel';
    expect(found(talk)).toEqual([]);
    expect(standing(talk)).toContainEqual(expect.objectContaining({ text: 'not my hip, my shin, my heel' }));
  });
});
