// A site's side is the one said, shared, mirrored or carried along its limb, and never one that nobody gave. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

const findings = (talk: string) => read(talk, 'finding');

describe('the side of a site', () => {
  it.each([
    ['left elbow is swollen | tender there too', ['swelling left elbow', 'tenderness left elbow']],
    ['right ankle | bruising', ['contusion right ankle']],
    ['left shin bruised | the knee is sore', ['contusion left lower-leg', 'pain left knee']],
  ])('stays in mind along its limb: %s', (talk, expected) => {
    expect(findings(talk)).toEqual(expected);
  });

  it.each([
    ['left forearm | the thigh is bruised', ['contusion thigh']],
    ['chest bruised on the left | the sternum is sore', ['contusion left chest', 'pain sternum']],
    ['deformity of the opposite wrist', ['deformity wrist']],
  ])('is not taken where nothing gives one: %s', (talk, expected) => {
    expect(findings(talk)).toEqual(expected);
  });

  it.each([
    ['left hip, thigh and knee swollen', ['swelling left hip', 'swelling left thigh', 'swelling left knee']],
    ['graze to the shin on the left', ['abrasion left lower-leg']],
    ['bruise on the right cheek and the jaw', ['contusion right cheek', 'contusion jaw']],
    ['tenderness in the right lower quadrant', ['tenderness right lower-quadrant']],
  ])('is shared by the sites of a list that have two: %s', (talk, expected) => {
    expect(findings(talk)).toEqual(expected);
  });

  it.each([
    ['left wrist swollen | same on the right', ['swelling left wrist', 'swelling right wrist']],
    ['puncture in the left thigh | other side is the same', ['puncture left thigh', 'puncture right thigh']],
    [
      'right shoulder bruised | left shoulder the same',
      ['contusion right shoulder', 'contusion left shoulder'],
    ],
    ['left wrist bruised | the other wrist is fine', ['contusion left wrist', 'no abnormality right wrist']],
  ])('is turned by what says so: %s', (talk, expected) => {
    expect(findings(talk)).toEqual(expected);
  });

  it('is not turned by "same" alone, which names no place', () => {
    expect(findings('left wrist swollen | same')).toEqual(['swelling left wrist']);
  });

  it.each([
    ['both elbows grazed', 'abrasion both elbow', {}],
    ['elbows are bruised', 'contusion both elbow', { side: 'inferred' }],
    ['left elbow | sore', 'pain left elbow', { site: 'carried', side: 'carried' }],
    ['sore left elbow', 'pain left elbow', {}],
  ])('says how it was known: %s', (talk, expected, known) => {
    expect(findings(talk)).toEqual([expected]);
    expect(statementsOf(talk).at(-1)?.known).toEqual(known);
  });
});

describe('a side before a finding that has its own place', () => {
  it('is that of the finding', () => {
    expect(read('right facial droop')).toEqual(['asymmetry right face']);
  });
});
