// Whose fall it was and how far, and the criteria that rest on it; all texts are invented.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import { fallIn } from '../../src/clinical/told/fall.ts';
import { age, clock, told } from './build.ts';

const stateOf = (rule: string, text: string, years = 70) => {
  const { flags } = reckon([age(years), told('mechanism', text)], { now: clock(30) });
  return flags.find((flag) => flag.rule === rule)?.state;
};

describe('the fall of the patient', () => {
  it.each([
    ['fell thirty feet', 30],
    ['he fell about thirty feet off a cliff and hit his head', 30],
    ['a twelve foot fall', 12],
    ['the climber fell twenty feet', 20],
    ['gary fell fifteen feet', 15],
    ['seventy year old woman fell down the stairs, about eight feet', 8],
    ['fell off the roof, he says about twelve feet', 12],
    ['fell off a wall about four feet high, found fifty metres from the car park', 4],
    ['walked two hundred feet down the trail and then fell six feet', 6],
    ['fell four feet off a wall twelve feet high', 4],
    ['fell six feet then another twelve feet', 12],
    ['thrown forty feet, fell off the horse', null],
    ['fell off a wall, found fifty metres from the car park', null],
    ['fell near a ledge ten feet wide', null],
    ['fell and crawled a hundred metres', null],
    ['fell fifty metres from the car park', null],
    ['rock fell beside him and he fell eleven feet', 11],
    ['the ladder slipped and he fell twelve feet', 12],
    ['the ladder slipped, fell twelve feet', 12],
    ['was twenty feet up when she slipped', 20],
    ['fall from a height of fourteen feet', 14],
    ['her foot slipped, fell eleven feet onto her back', 11],
    ['fell twelve feet on her right hip', 12],
    ['slipped and fell thirty feet onto his head', 30],
    ['dropped fifteen feet onto a ledge', 15],
  ])('is told in "%s"', (text, feet) => expect(fallIn(text)).toEqual({ ofPatient: true, feet }));

  it.each([
    'a rock fell about thirty feet and hit him on the head',
    'hit by a boulder that fell forty feet',
    'a branch broke off and fell twenty feet onto him',
    'tree fell on her',
    'a slab came loose and fell twelve feet on his leg',
    'rock fall from thirty feet above',
    'fall of rocks from thirty feet',
    'a slate slipped off the roof, thirty feet, on top of him',
    'dropped a slab on his foot from twelve feet',
    'his horse fell and rolled on him',
    'her brother fell thirty feet',
    'the hopper fell twelve feet',
  ])('is not told in "%s"', (text) => expect(fallIn(text)?.ofPatient).toBe(false));

  it.each(['did not fall', 'no fall', 'hit by a car'])('is no fall at all in "%s"', (text) =>
    expect(fallIn(text)).toBeNull(),
  );
});

describe('the criteria of a fall', () => {
  it.each([
    ['a rock fell about thirty feet and hit him on the head', 'unknown', 'unknown'],
    ['fell off a wall about four feet high, found fifty metres from the car park', 'not-met', 'unknown'],
    ['fell thirty feet off a cliff and hit her head', 'met', 'not-met'],
    ['fell four feet and hit her head', 'not-met', 'met'],
    ['fell off the bed and hit her head', 'unknown', 'met'],
  ])('of "%s" at seventy', (text, high, low) => {
    expect([stateOf('fall-over-10-feet', text), stateOf('low-fall-head', text)]).toEqual([high, low]);
  });
});
