// A limb that is out of shape, in everyday words, and stairs and lines that only sound like it. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';
import { checkStatements } from '../rows.ts';
import { found } from '../standing.ts';

describe('out of shape', () => {
  it.each([
    ['left clavicle feels stepped', 'clavicle', 'left'],
    ['definite step at the left ankle', 'ankle', 'left'],
    ['there is a step on the left wrist', 'wrist', 'left'],
    ['left forearm has a kink in it', 'forearm', 'left'],
    ['left shin looks kinked', 'lower-leg', 'left'],
    ['left elbow is an odd shape', 'elbow', 'left'],
    ['left foot is lying at a weird angle', 'foot', 'left'],
    ['left forearm is bowed', 'forearm', 'left'],
    ['the left thumb looks wonky', 'thumb', 'left'],
    ["left thigh isn't straight", 'thigh', 'left'],
    ['left shoulder has lost its shape', 'shoulder', 'left'],
    ['there is a dip in the left side of the skull', 'skull', 'left'],
    ['jaw is off to one side', 'jaw', null],
  ] as const)('is a deformity: %s', (talk, site, side) => {
    expect(found(talk)).toEqual([[site, side, 'deformity', true]]);
  });

  it.each([
    ["right wrist isn't a funny shape", 'wrist', 'right'],
    ['right ankle is the right shape', 'ankle', 'right'],
    ['no kink in the right forearm', 'forearm', 'right'],
    ['no step in the right elbow', 'elbow', 'right'],
  ] as const)('is denied: %s', (talk, site, side) => {
    expect(found(talk)).toEqual([[site, side, 'deformity', false]]);
  });

  it('is there by the words of an answer', () => {
    expect(found('does the left wrist look bent | it is a strange shape')).toEqual([
      ['wrist', 'left', 'deformity', true],
    ]);
  });
});

describe('a stair, a line and a thing', () => {
  it.each([
    'left elbow sore after she missed a step',
    "went over on a step, left ankle's sore",
    'left arm sore, the drip line is kinked',
    'left shin sore, kink in the line',
    'left knee sore | he went in for a dip',
    'left shin sore | his pole is bent at a funny angle',
    'left foot sore | take a step for me',
    'left knee sore | one step at a time',
    'left knee sore and it is bent',
  ])('is no deformity: %s', (talk) => {
    expect(read(talk, 'finding').filter((one) => one.includes('deformity'))).toEqual([]);
  });

  checkStatements([
    ['he missed a step', ['note: he missed a step']],
    ['the tubing is kinked', ['note: the tubing is kinked']],
  ]);
});

describe('the number of a part of the coma scale', () => {
  // Twenty cannot be a sum, and the part behind it has its number before it.
  checkStatements([
    [
      'gcs rose from eight to twenty one on eyes two on speech four motor',
      ['note: gcs rose from eight to twenty one on eyes two on speech four motor'],
    ],
    ['eyes two', ['gcs eye=2']],
  ]);
});
