// "He does take it", "she did pass out": a "do" behind its subject tells, and asks nothing. All invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

describe('an emphatic "do" tells what the plain verb tells', () => {
  it.each([
    ['her brother says she does take edoxaban', 'medications', 'edoxaban'],
    ['any pills | none | he does take dabigatran mind you', 'medications', 'dabigatran mind you'],
    ['the patient does use a puffer', 'medications', 'the patient does use a puffer'],
    ['she does carry an epipen', 'medications', 'she does carry an epipen'],
    ['they do take ramipril', 'medications', 'ramipril'],
    ['his sister does say he takes sertraline', 'medications', 'sertraline'],
    ['he does suffer from gout', 'past-history', 'he does suffer from gout'],
    ['he did throw up', 'symptoms', 'he did throw up'],
  ])('%s', (talk, topic, text) => {
    expect(standing(talk).at(-1)).toEqual(expect.objectContaining({ kind: 'history', topic, text }));
    expect(standing(talk).at(-1)).not.toHaveProperty('present', false);
  });

  it('is of what is found, too', () => {
    expect(found('she does get belly pain now and again')).toEqual([['abdomen', null, 'pain', true]]);
    expect(found('he does complain of pain in the left hip')).toEqual([['hip', 'left', 'pain', true]]);
  });

  it.each(['she does snore something terrible', 'he does flinch', 'the casualty does drool a bit'])(
    'is kept in its words where the grammar has no place for it: %s',
    (said) => {
      expect(standing(said)).toEqual([expect.objectContaining({ kind: 'note', text: said })]);
    },
  );
});

describe('it asks where it stands before its subject, or behind all', () => {
  it.each([
    'does she take edoxaban',
    'did he take anything today',
    'does the patient use a puffer',
    'can his wife take that',
    'he does take his pills, does he?',
  ])('%s', (said) => {
    expect(standing(said).filter(({ kind }) => kind === 'history')).toEqual([]);
  });

  it('answers in the breath before another question', () => {
    expect(found('any pain in the left hip | he does | any pain in the right hip | no')).toEqual([
      ['hip', 'left', 'pain', true],
      ['hip', 'right', 'pain', false],
    ]);
  });

  it('denies with its "not"', () => {
    expect(standing('his wife says he does not take anything')).toEqual([
      expect.objectContaining({ topic: 'medications', present: false }),
    ]);
  });
});
