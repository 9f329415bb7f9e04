// "No, it's just bumpy": a no to what was asked after, and what it is instead. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { found, standing } from '../standing.ts';

describe('a "no" that says what it is instead', () => {
  it.each([
    ['is your right elbow swollen | no it is just knobbly', [['elbow', 'right', 'swelling', false]]],
    ["any bleeding from the left ear | no that's only mud", [['ear', 'left', 'bleeding', false]]],
    [
      "does your right arm hurt | no it's just stiff",
      [
        ['arm', 'right', 'pain', false],
        ['arm', 'right', 'limited-motion', true],
      ],
    ],
    [
      "is the left foot numb no it's sore",
      [
        ['foot', 'left', 'numbness', false],
        ['foot', 'left', 'pain', true],
      ],
    ],
    ["any weakness in your right leg | no it's as strong as ever", [['leg', 'right', 'weakness', false]]],
    [
      "does your right wrist hurt | no it's my thumb",
      [
        ['wrist', 'right', 'pain', false],
        ['thumb', null, 'pain', true],
      ],
    ],
    ["is your neck sore | no it isn't", [['neck', null, 'pain', false]]],
  ] as const)('denies what was asked: %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each(['is your left wrist sore | no it is sore to touch'])(
    'settles nothing where it says the same: %s',
    (talk) => expect(found(talk)).toEqual([]),
  );

  it('takes back what was told', () => {
    const [one] = standing("right ankle swollen | no it's just bony").filter(
      ({ kind }) => kind === 'finding',
    );
    expect(one?.doubt?.join(' ')).toContain('Taken back by');
  });

  checkStatements([
    ["any allergies | no it's only dust", ["allergies: no it's only dust"]],
    ["is his pulse ninety | no it's seventy", ['pulse rate=70']],
  ]);
});
