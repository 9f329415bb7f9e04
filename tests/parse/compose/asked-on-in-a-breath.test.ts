// Two questions and their answers in one breath: each place has its own answer. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

describe('a place behind an answer, with an answer of its own behind it', () => {
  it.each([
    [
      'does it hurt when i squeeze your left calf yes it does and the right calf no not at all',
      [
        ['lower-leg', 'left', 'tenderness', true],
        ['lower-leg', 'right', 'tenderness', false],
      ],
    ],
    [
      'is the right elbow sore no and the left one yes a bit',
      [
        ['elbow', 'right', 'pain', false],
        ['elbow', 'left', 'pain', true],
      ],
    ],
    [
      'any tingling in your left foot no okay and the other side yes',
      [
        ['foot', 'left', 'tingling', false],
        ['foot', 'right', 'tingling', true],
      ],
    ],
    [
      'any pain in the left hip no left thigh no left knee yes',
      [
        ['hip', 'left', 'pain', false],
        ['thigh', 'left', 'pain', false],
        ['knee', 'left', 'pain', true],
      ],
    ],
    [
      'does your left forearm hurt yes sorry and the right one no',
      [
        ['forearm', 'left', 'pain', true],
        ['forearm', 'right', 'pain', false],
      ],
    ],
    [
      'any bleeding from the left ear no or the right no',
      [
        ['ear', 'left', 'bleeding', false],
        ['ear', 'right', 'bleeding', false],
      ],
    ],
  ] as const)('is asked after in %s', (talk, means) => expect(found(talk)).toEqual(means));

  it('is asked after where a limb was checked', () => {
    const checks = standing('can you feel me touching your right foot yes and the left foot no').flatMap(
      (one) => (one.kind === 'csm' ? [[one.site, one.side, one.aspect, one.present]] : []),
    );
    expect(checks).toEqual([
      ['foot', 'right', 'sensation', true],
      ['foot', 'left', 'sensation', false],
    ]);
  });

  it.each([
    [
      'is the left calf sore no and the right calf swollen',
      [
        ['lower-leg', 'left', 'pain', false],
        ['lower-leg', 'right', 'swelling', true],
      ],
    ],
    [
      'does your left foot hurt yes and the right ankle no swelling',
      [
        ['foot', 'left', 'pain', true],
        ['ankle', 'right', 'swelling', false],
      ],
    ],
    ['does either knee hurt | yes the left one yes', [['knee', 'left', 'pain', true]]],
  ] as const)('is told of where something is said of it: %s', (talk, means) =>
    expect(found(talk)).toEqual(means),
  );
});

describe('a question without its sign, told by the answers behind it', () => {
  it.each([
    [
      'tender when i press on the collarbone no okay and the right ribs yes ow',
      [
        ['clavicle', null, 'tenderness', false],
        ['ribs', 'right', 'tenderness', true],
      ],
    ],
    [
      'hurts to touch on the left cheek yes and the right cheek no',
      [
        ['cheek', 'left', 'tenderness', true],
        ['cheek', 'right', 'tenderness', false],
      ],
    ],
    [
      'sore over the belly no what about the left ribs yes',
      [
        ['abdomen', null, 'pain', false],
        ['ribs', 'left', 'pain', true],
      ],
    ],
    ['bruising on the right hip no', [['hip', 'right', 'contusion', false]]],
  ] as const)('in %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each([
    [
      'tender over the left knee no deformity',
      [
        ['knee', 'left', 'tenderness', true],
        ['knee', 'left', 'deformity', false],
      ],
    ],
    ['swelling round the left eye no change', [['eye', 'left', 'swelling', true]]],
    ['tender over the left ribs and the right no', [['ribs', 'left', 'tenderness', true]]],
    ['bruise on the left thigh yes i see it', [['thigh', 'left', 'contusion', true]]],
    ['tender over the left wrist no the right wrist', [['wrist', 'right', 'tenderness', true]]],
  ] as const)('and in no other talk: %s', (talk, means) => expect(found(talk)).toEqual(means));
});

describe('a finding with its place and its answer behind it', () => {
  it.each([
    [
      'swelling on the left elbow no swelling on the right elbow yes',
      [
        ['elbow', 'left', 'swelling', false],
        ['elbow', 'right', 'swelling', true],
      ],
    ],
    [
      'numbness of the left hand yes numbness of the right hand no',
      [
        ['hand', 'left', 'numbness', true],
        ['hand', 'right', 'numbness', false],
      ],
    ],
  ] as const)('opens nothing with its answer: %s', (talk, means) => expect(found(talk)).toEqual(means));
});
