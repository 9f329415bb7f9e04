// "Left calf swollen the other side isn't": behind what was found "the other side" opens what is said of it. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found } from '../standing.ts';

describe('the other side', () => {
  it.each([
    [
      'right shin bruised no swelling other side not bruised but swollen',
      [
        ['lower-leg', 'right', 'contusion', true],
        ['lower-leg', 'right', 'swelling', false],
        ['lower-leg', 'left', 'contusion', false],
        ['lower-leg', 'left', 'swelling', true],
      ],
    ],
    [
      'left elbow tender, other side not tender',
      [
        ['elbow', 'left', 'tenderness', true],
        ['elbow', 'right', 'tenderness', false],
      ],
    ],
    [
      'left ankle swollen the other side isn’t swollen',
      [
        ['ankle', 'left', 'swelling', true],
        ['ankle', 'right', 'swelling', false],
      ],
    ],
    [
      'right hand no cuts other side cut',
      [
        ['hand', 'right', 'laceration', false],
        ['hand', 'left', 'laceration', true],
      ],
    ],
  ] as const)('is what follows: %s', (talk, entries) => expect(found(talk)).toEqual(entries));

  it('of another place is that place’s', () => {
    expect(found('right knee is swollen the other side of the leg is fine')).toEqual([
      ['knee', 'right', 'swelling', true],
      ['leg', 'left', 'abnormality', false],
    ]);
  });

  it('behind a finding is where that is', () => {
    expect(found('left hip tender swelling on the other side')).toEqual([
      ['hip', 'left', 'tenderness', true],
      ['hip', 'right', 'swelling', true],
    ]);
  });
});

describe('a place with a "none" or a "both" behind it', () => {
  it.each([
    [
      'swelling of the left wrist right wrist none',
      [
        ['wrist', 'left', 'swelling', true],
        ['wrist', 'right', 'swelling', false],
      ],
    ],
    [
      'graze on the right shin, left shin none',
      [
        ['lower-leg', 'right', 'abrasion', true],
        ['lower-leg', 'left', 'abrasion', false],
      ],
    ],
    ['left foot has a rash on the heel right foot none', [['heel', 'left', 'rash', true]]],
    ['bruise on the right shin left thigh none', [['lower-leg', 'right', 'contusion', true]]],
    [
      "right thigh isn't tender or swollen but left thigh's both",
      [
        ['thigh', 'right', 'tenderness', false],
        ['thigh', 'right', 'swelling', false],
        ['thigh', 'left', 'tenderness', true],
        ['thigh', 'left', 'swelling', true],
      ],
    ],
    [
      'left elbow cut and bruised the right elbow is both',
      [
        ['elbow', 'left', 'laceration', true],
        ['elbow', 'left', 'contusion', true],
        ['elbow', 'right', 'laceration', true],
        ['elbow', 'right', 'contusion', true],
      ],
    ],
    ["left calf isn't tender the right calf is both", [['lower-leg', 'left', 'tenderness', false]]],
    ['sore over the left hip no', [['hip', 'left', 'pain', false]]],
  ] as const)('is told by itself: %s', (talk, entries) => expect(found(talk)).toEqual(entries));
});
