// "Pulled a pan of hot water onto his arm", "cool water on the hand": what was spilled is no care, and what cools is no cold limb. All invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const kinds = (talk: string) => standing(talk).map(({ kind }) => kind);
const cares = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'care' ? [[one.care, one.site ?? null]] : []));

describe('what was spilled on somebody is what happened', () => {
  it.each([
    'he tipped a mug of hot coffee down his chest',
    'boiling water across both feet',
    'hot fat splashed onto her left wrist',
    'she knocked a bowl of soup over her knees',
    'a pan of hot water over the right foot',
    'they spilled boiling water on her hand',
  ])('%s', (said) => {
    expect(standing(said)).toEqual([expect.objectContaining({ topic: 'mechanism', text: said })]);
  });

  it.each([
    'hot water on the sting on his foot',
    'warm water soak for her right hand',
    'hot tea on the left sleeve',
  ])('or is kept in words, and was given to nobody: %s', (said) => {
    expect(cares(said)).toEqual([]);
    expect(kinds(said)).toContain('note');
  });
});

it.each([
  ['gave her hot water to sip', 'fluids'],
  ['sips of warm tea given', 'fluids'],
  ['hot sweet tea given', 'fluids'],
])('what was given to drink is care: %s', (said, care) => {
  expect(cares(said)).toEqual([[care, null]]);
});

describe('a thing that is cool', () => {
  it.each([
    'cool water on the right hand',
    'cold flannel on his left ankle',
    'we ran cold water over the left foot',
  ])('is no cool limb: %s', (said) => {
    expect(kinds(said)).not.toContain('csm');
    expect(kinds(said)).toContain('note');
  });

  it('and a limb that is cool is', () => {
    expect(kinds('left foot cool, wet socks')).toContain('csm');
    expect(kinds('right hand is cold')).toContain('csm');
  });
});

it('what is found where it was spilled is of that place', () => {
  expect(found("she tipped hot soup on her right thigh and there's a burn")).toEqual([
    ['thigh', 'right', 'burn', true],
  ]);
  expect(found('spilled hot tea on his left hand, it is swollen')).toEqual([
    ['hand', 'left', 'swelling', true],
  ]);
});

it('cold water that somebody fell in cooled nobody', () => {
  expect(cares('slipped and fell in cold water')).toEqual([]);
  expect(cares('left hand in cold water')).toEqual([['cooling', 'hand']]);
  expect(cares('burn on the left hand | in cold water')).toEqual([['cooling', null]]);
});
