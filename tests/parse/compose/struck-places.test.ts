// "Banged her knee", "the gate caught his shoulder": a place that something struck was not looked at for that. All invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const kinds = (talk: string) => standing(talk).map(({ kind }) => kind);

describe('what somebody struck is what happened', () => {
  it.each([
    ['came off the bike | bumped his forehead, no loss of consciousness', 'bumped his forehead'],
    ['she whacked her left elbow', 'she whacked her left elbow'],
    ['he smacked his face hard, was not knocked out', 'he smacked his face hard'],
    ['thumped his right shoulder, never passed out', 'thumped his right shoulder'],
  ])('%s', (talk, text) => {
    expect(standing(talk)).toContainEqual(expect.objectContaining({ topic: 'mechanism', text }));
    expect(kinds(talk)).not.toContain('visit');
  });

  it.each([
    'the gate caught his right shoulder',
    'the harness dug into her chest, no airbag',
    'she elbowed herself in the nose, no bleeding',
    'he banged his head and feels sick',
    'when she hit her head she blacked out',
  ])('is kept in its words where it stands among others, and is no look: %s', (talk) => {
    expect(kinds(talk)).not.toContain('visit');
    expect(standing(talk).length).toBeGreaterThan(0);
  });
});

describe('what is found there is of that place', () => {
  it('in the same breath and the next', () => {
    expect(found('he bumped his left elbow, it is sore')).toEqual([['elbow', 'left', 'pain', true]]);
    expect(found('she hit her head, scalp is cut')).toEqual([['skull', null, 'laceration', true]]);
  });
});

it.each([
  ['knocked on her chest, sounds hollow', 'chest'],
  ['i tapped his left knee', 'knee'],
  ['checking his head', 'head'],
  ['looked at the hip he landed on', 'hip'],
])('the examiner looks and strikes nothing: %s', (talk, site) => {
  expect(standing(talk)).toContainEqual(expect.objectContaining({ kind: 'visit', site }));
});

it.each(['he did not hit his head', 'she never hit her head'])(
  'what was not struck is no mechanism: %s',
  (talk) => {
    expect(standing(talk)).not.toContainEqual(expect.objectContaining({ topic: 'mechanism' }));
  },
);
