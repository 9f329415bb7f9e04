// A pulse that is not there is the patient’s and no limb’s where the heart stopped; what is given, or said of the whole, is no finding of a place in
// mind. All talk is invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { standing } from '../standing.ts';

const limbs = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'csm' ? [`${one.side} ${one.site}`] : []));
const notes = (talk: string) => standing(talk).flatMap((one) => (one.kind === 'note' ? [one.text] : []));

describe('no pulse', () => {
  it.each([
    ['left wrist is bruised | he is unresponsive, no pulse, stopped breathing', 'no pulse'],
    ['right shin swollen | no pulse, starting cpr', 'no pulse'],
    ['right shin swollen | starting cpr | no pulse', 'no pulse'],
    ['left elbow is fine | no pulse oximeter in the bag', 'no pulse oximeter in the bag'],
    ['left elbow is fine | no carotid pulse', 'no carotid pulse'],
  ])('is no limb’s: %s', (talk, note) => {
    expect(limbs(talk)).toEqual([]);
    expect(notes(talk)).toContain(note);
  });

  it.each([
    ['right shin swollen | no pulse', 'right foot'],
    ['unresponsive | left forearm | no pulse', 'left hand'],
    ['left hand has no pulse and he is unresponsive', 'left hand'],
  ])('is a limb’s where one was named: %s', (talk, limb) => expect(limbs(talk)).toEqual([limb]));
});

describe('what is said of the whole', () => {
  checkStatements([
    ['right ankle is sore | no distracting injuries', ['pain right ankle', 'note: no distracting injuries']],
    ['right ankle is sore | no midline tenderness', ['pain right ankle', 'note: no midline tenderness']],
    // Must not: a place that has a midline.
    ['back is sore | no midline tenderness', ['pain back', 'no tenderness midline back']],
  ]);
});

describe('fluids that are given', () => {
  it.each([
    'left ear is clear | giving fluids',
    'belly is soft | fluids, third bag',
    'belly is soft | fluids stopped',
  ])('are no finding of the place in mind: %s', (talk) =>
    expect(standing(talk).filter((one) => one.kind === 'finding' && one.finding === 'fluid')).toEqual([]),
  );

  checkStatements([
    ['left ear | clear fluid', ['visit left ear', 'fluid left ear']],
    ['fluids from the right ear', ['fluid right ear']],
  ]);
});
