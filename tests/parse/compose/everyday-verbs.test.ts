// Denials as people say them far from a classroom: "ain't", "it don't", and two negatives that are one. All invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { found, standing } from '../standing.ts';

describe('"ain\'t"', () => {
  checkStatements([
    ["left knee ain't swollen", ['no swelling left knee']],
    ["belly ain't rigid", ['no rigidity abdomen']],
    [
      "right forearm ain't deformed and ain't tender",
      ['no deformity right forearm', 'no tenderness right forearm'],
    ],
    ["scalp ain't got no cuts", ['no laceration skull']],
    ["there ain't nothing wrong with that left arm", ['no abnormality left arm']],
  ]);
});

describe('a second negative', () => {
  checkStatements([
    ["can't see no bruises on the left thigh", ['no contusion left thigh']],
    ["he don't have no pain in the groin", ['no pain groin']],
    ["the right hip don't hurt no more", ['no pain right hip']],
    ["he's not got any swelling in the left ankle", ['no swelling left ankle']],
    ['left thigh no bruising neither', ['no contusion left thigh']],
    [
      "right wrist isn't swollen either, right hand fine",
      ['no swelling right wrist', 'no abnormality right hand'],
    ],
    ["he don't got no loose teeth", ['no loose-teeth teeth']],
  ]);

  it.each([
    ["can't find no pulse in the left foot", 'circulation'],
    ["he's not got no feeling in the left foot", 'sensation'],
    ["the left foot ain't got no feeling", 'sensation'],
  ])('denies nothing more: %s', (said, aspect) => {
    expect(standing(said)).toEqual([
      expect.objectContaining({ kind: 'csm', site: 'foot', side: 'left', aspect, present: false }),
    ]);
  });

  it('is an answer of its own where something else begins with it', () => {
    expect(found("left knee | can you bend it | I can't, no it's swollen")).toEqual([
      ['knee', 'left', 'swelling', true],
    ]);
  });
});

describe('"don\'t" of one thing', () => {
  checkStatements([
    ["my neck don't hurt", ['no pain neck']],
    ["left elbow don't look swollen", ['no swelling left elbow']],
  ]);

  it.each(["it don't hurt", "it don't", "nope it don't hurt none"])('denies what was asked: %s', (answer) => {
    expect(found(`does your left shoulder hurt | ${answer}`)).toEqual([['shoulder', 'left', 'pain', false]]);
  });

  it.each(["left arm don't move", "left knee don't bend it", "left arm, don't hurt yourself"])(
    'tells somebody what not to do where that can be told: %s',
    (said) => {
      expect(standing(said).filter(({ kind }) => kind === 'finding' || kind === 'csm')).toEqual([]);
    },
  );
});

it('"never had anything wrong" is a past without illness', () => {
  expect(standing("any past history | I ain't never had nothing wrong with me")).toEqual([
    expect.objectContaining({ kind: 'history', topic: 'past-history', present: false }),
  ]);
});

describe('figures and teaching as they are said', () => {
  it('"double" is said of a digit, and of nothing else', () => {
    expect(standing('saturation double nine percent')).toEqual([
      expect.objectContaining({ vital: 'oxygen-saturation', value: { percent: 99 } }),
    ]);
    expect(standing('pulse double').filter(({ kind }) => kind === 'vital')).toEqual([]);
  });

  it('what is so "in a broken" anything is taught, and not found', () => {
    expect(found('in a fractured hip the leg is shortened, so never pull on it')).toEqual([]);
    expect(found('he has a broken pelvis')).not.toEqual([]);
  });
});

it.each(['not a single one', 'nope not a single thing', 'no not a one'])(
  '"%s" denies what was asked of the past',
  (answer) => {
    expect(standing(`any medications | ${answer}`)).toEqual([
      expect.objectContaining({ kind: 'history', topic: 'medications', present: false }),
    ]);
  },
);
