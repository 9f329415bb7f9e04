// "My tummy, but not my hips": of what was asked after, one place has it and the other has not. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found } from '../standing.ts';

describe('places with and without what was asked after', () => {
  it.each([
    [
      'any pain in your neck or your chest | my chest yes but not my neck',
      [
        ['chest', null, 'pain', true],
        ['neck', null, 'pain', false],
      ],
    ],
    [
      'any pain in your neck or your chest | yes my chest but not my neck',
      [
        ['chest', null, 'pain', true],
        ['neck', null, 'pain', false],
      ],
    ],
    [
      "any pain in your neck or your chest | my chest, yes, but not my neck, that's all right",
      [
        ['chest', null, 'pain', true],
        ['neck', null, 'pain', false],
      ],
    ],
    [
      'is it your thigh or your knee that hurts | my knee yes not my thigh',
      [
        ['knee', null, 'pain', true],
        ['thigh', null, 'pain', false],
      ],
    ],
    ['any pain in your neck or your chest | not my neck', [['neck', null, 'pain', false]]],
    ['any pain in your neck or your chest | my chest yes', [['chest', null, 'pain', true]]],
    [
      'any pain | my left elbow but not my right elbow',
      [
        ['elbow', 'left', 'pain', true],
        ['elbow', 'right', 'pain', false],
      ],
    ],
    ['any pain in your neck | yes not my back', [['neck', null, 'pain', true]]],
  ] as const)('in %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each(['is your elbow sore | not my elbow my wrist', 'any pain in your chest | not my arm'])(
    'settle nothing where one is left open: %s',
    (talk) => expect(found(talk)).toEqual([]),
  );
});
