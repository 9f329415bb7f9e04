// Questions that a recogniser writes without their sign, told by the order of their words; and tails behind them. All talk here is
// invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const exam = (talk: string) =>
  standing(talk).filter(({ kind }) => kind === 'finding' || kind === 'csm' || kind === 'vital');

describe('a verb before what it is said of', () => {
  it.each([
    'is she bleeding from the left ear',
    'was he tender over the belly',
    'are both feet numb',
    'is right wrist swollen',
    'are her hands cold',
    'has his nose been bleeding',
    'is patient bleeding from the scalp',
    "isn't she tender over the ribs",
    "doesn't his right ankle look swollen",
    'were his pupils equal',
    'are these bruises on the chest',
  ])('asks: %s', (talk) => expect(exam(talk)).toEqual([]));

  it('asks behind what was told', () =>
    expect(found('right shin swollen is he tender over the knee')).toEqual([
      ['lower-leg', 'right', 'swelling', true],
    ]));

  it.each([
    ['left elbow | is swollen', [['elbow', 'left', 'swelling', true]]],
    ['is bleeding from the right ear', [['ear', 'right', 'bleeding', true]]],
    ['has both ankles swollen', [['ankle', 'both', 'swelling', true]]],
    ['trouble is she is numb in the right hand', [['hand', 'right', 'numbness', true]]],
    ['nor is he tender over the belly', [['abdomen', null, 'tenderness', false]]],
    ['did not feel any crepitus in the ribs', [['ribs', null, 'crepitus', false]]],
  ] as const)('tells where nothing stands behind it, or something before it: %s', (talk, means) =>
    expect(found(talk)).toEqual(means),
  );
});

describe('a question with a tail', () => {
  it.each([
    'is there any bleeding from the nose can you tell',
    'is her left knee swollen do you think',
    'any rash on the back would you say',
    "is that right elbow bent d'you reckon",
  ])('enters nothing: %s', (talk) => expect(exam(talk)).toEqual([]));

  it.each([
    ['any bruising on her chest can you see no nothing', [['chest', null, 'contusion', false]]],
    ['is his left ankle swollen do you think | yes', [['ankle', 'left', 'swelling', true]]],
    ['is she bleeding from the left ear can you see | no', [['ear', 'left', 'bleeding', false]]],
  ] as const)('is answered all the same: %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each([
    ['the left ear is bleeding can you see it', [['ear', 'left', 'bleeding', true]]],
    ['his right wrist is swollen do you see', [['wrist', 'right', 'swelling', true]]],
  ] as const)('leaves what was told: %s', (talk, means) => expect(found(talk)).toEqual(means));
});
