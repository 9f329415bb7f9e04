// One long breath down a limb, as a recogniser writes it: each thing stays with its own place. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const cared = (talk: string) =>
  standing(talk).flatMap((one) =>
    one.kind === 'care' ? [[one.care, one.site ?? null, one.side ?? null]] : [],
  );

describe('what is said of one place', () => {
  it.each([
    [
      'left thigh is bruised no swelling on it knee unremarkable',
      [
        ['thigh', 'left', 'contusion', true],
        ['thigh', 'left', 'swelling', false],
        ['knee', 'left', 'abnormality', false],
      ],
    ],
    [
      'right elbow is sore and she will not bend it forearm nothing found',
      [
        ['elbow', 'right', 'pain', true],
        ['elbow', 'right', 'limited-motion', true],
        ['forearm', 'right', 'abnormality', false],
      ],
    ],
    [
      'right shin is swollen with a cut about two centimetres still bleeding ankle not tender',
      [
        ['lower-leg', 'right', 'swelling', true],
        ['lower-leg', 'right', 'laceration', true],
        ['lower-leg', 'right', 'bleeding', true],
        ['ankle', 'right', 'tenderness', false],
      ],
    ],
  ] as const)('stays there in %s', (talk, facts) => expect(found(talk)).toEqual(facts));

  it.each([
    [
      'left eye is bruised and swollen right eye fine',
      [
        ['eye', 'left', 'contusion', true],
        ['eye', 'left', 'swelling', true],
        ['eye', 'right', 'abnormality', false],
      ],
    ],
    [
      'left knee swollen bruised right ankle',
      [
        ['knee', 'left', 'swelling', true],
        ['ankle', 'right', 'contusion', true],
      ],
    ],
    [
      'no deformity of the right wrist moves well, swollen left thumb no numbness',
      [
        ['wrist', 'right', 'deformity', false],
        ['thumb', 'left', 'swelling', true],
        ['thumb', 'left', 'numbness', false],
      ],
    ],
  ] as const)('and what leads to another is said of that, in %s', (talk, facts) =>
    expect(found(talk)).toEqual(expect.arrayContaining([...facts])),
  );
});

describe('a side that leads to its place', () => {
  it('is that place and its denial leaves it alone', () => {
    const [lump, other] = standing(
      'head has a lump on the right side of the jaw about two centimetres no bleeding',
    ).filter(({ kind }) => kind === 'finding');
    expect(lump).toMatchObject({
      site: 'jaw',
      side: 'right',
      finding: 'swelling',
      present: true,
      size: { value: 2 },
    });
    expect(other).toMatchObject({ finding: 'bleeding', present: false });
    expect(other).not.toHaveProperty('size');
  });
});

describe('what somebody did', () => {
  it.each([
    [
      "right arm is in a sling and we've bandaged the right thumb",
      [
        ['sling', 'arm', 'right'],
        ['bandage', 'thumb', 'right'],
      ],
    ],
    [
      "the left leg's splinted and i have bandaged the left knee",
      [
        ['splint', 'leg', 'left'],
        ['bandage', 'knee', 'left'],
      ],
    ],
    [
      'the left forearm is bandaged and splinted',
      [
        ['bandage', 'forearm', 'left'],
        ['splint', 'forearm', 'left'],
      ],
    ],
  ] as const)('was done to the place behind it: %s', (talk, care) => expect(cared(talk)).toEqual(care));
});
