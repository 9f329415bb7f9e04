// Questions beside what the examiner does or the patient is told to do: "when I press here does that hurt", "big breath, does that hurt
// your chest". All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found } from '../standing.ts';

describe('a question after a press', () => {
  it.each([
    ['when i press on your left elbow does that hurt | yes ow', [['elbow', 'left', 'tenderness', true]]],
    ['and if i push on your right ribs does it hurt | no', [['ribs', 'right', 'tenderness', false]]],
    ['squeezing your pelvis now any pain | no', [['pelvis', null, 'tenderness', false]]],
    [
      'pressing on your belly does that hurt anywhere | nah that is fine',
      [['abdomen', null, 'tenderness', false]],
    ],
    ['pressing along the jaw sore anywhere | by the left ear', [['ear', 'left', 'pain', true]]],
  ] as const)('asks whether it is tender there: %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each([
    ['looking at your left knee now does that hurt | yes', [['knee', 'left', 'pain', true]]],
    ['pressing on the left shin he says it hurts', [['lower-leg', 'left', 'pain', true]]],
    ['pressing on the left shin shout if it hurts | no', [['lower-leg', 'left', 'pain', false]]],
    ['not sore anywhere', []],
  ] as const)('and no other: %s', (talk, means) => expect(found(talk)).toEqual(means));
});

describe('a question behind what somebody is told to do', () => {
  it.each([
    ['deep breath for me does that hurt your chest | no', [['chest', null, 'pain', false]]],
    ['lift your right arm for me does it hurt | yes', [['arm', 'right', 'pain', true]]],
    ['squeeze my hand any pain in your wrist | yes', [['wrist', null, 'pain', true]]],
  ] as const)('is answered: %s', (talk, means) => expect(found(talk)).toEqual(means));
});
