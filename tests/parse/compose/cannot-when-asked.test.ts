// "Can you bend your knee?" "No, it won't go": a "no" says that it is limited. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

describe('a "no" of somebody who was asked to move a limb', () => {
  it.each([
    [
      'can you straighten your left knee for me | no it will not go',
      [['knee', 'left', 'limited-motion', true]],
    ],
    ["could you lift your right arm | no i can't", [['arm', 'right', 'limited-motion', true]]],
    [
      'can you bend your right elbow | no it hurts',
      [
        ['elbow', 'right', 'limited-motion', true],
        ['elbow', 'right', 'pain', true],
      ],
    ],
  ] as const)('limits it: %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each([
    'can you straighten your left knee | yes',
    'can you straighten your left knee | a bit',
    'can you straighten your left knee | not all the way',
    'can you lift your left leg | no the other one',
    'can you lift your left leg | no wait stay still',
    'can you lift my bag | no',
    'can you lift your left leg | good | no',
  ])('limits nothing, and its words stay: %s', (talk) => {
    expect(found(talk)).toEqual([]);
    expect(standing(talk).some(({ kind }) => kind === 'note')).toBe(true);
  });

  it.each([
    ['can you lift your left arm | no swelling there', [['arm', 'left', 'swelling', false]]],
    ['can you bend your left knee | does it hurt | no', [['knee', 'left', 'pain', false]]],
    ['can you bend your left knee | yes but it hurts', [['knee', 'left', 'pain', true]]],
  ] as const)('is none where something else is said or asked: %s', (talk, means) =>
    expect(found(talk)).toEqual(means),
  );
});
