// Circulation, sensation and motion are stated of the limb's ends that were meant, as present or absent. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

const csm = (talk: string) => read(talk, 'csm');
const all = (side: string, end: string, no = '') =>
  ['circulation', 'sensation', 'motion'].map((aspect) => `${no}${aspect} ${side} ${end}`);

describe('a check of all three aspects', () => {
  it('gives twelve statements for all four limbs', () => {
    expect(csm('csm intact in all four')).toEqual([
      ...all('left', 'hand'),
      ...all('right', 'hand'),
      ...all('left', 'foot'),
      ...all('right', 'foot'),
    ]);
  });

  it('takes its aspects along to a second limb of which the other is said', () => {
    expect(csm('csm intact in both feet, absent in both hands')).toEqual([
      ...all('both', 'foot'),
      ...all('both', 'hand', 'no '),
    ]);
  });

  it('that is only named finds nothing', () => {
    expect(csm('right foot csm')).toEqual([]);
    expect(csm('feeling your collarbones')).toEqual([]);
  });
});

describe('a check of one aspect', () => {
  it.each([
    [
      'left hand, sensation and movement intact, no radial pulse',
      ['sensation left hand', 'motion left hand', 'no circulation left hand pulse=radial'],
    ],
    ['no sensation in the left foot', ['no sensation left foot']],
    ['no movement in the right hand', ['no motion right hand']],
    ["can't move the left toes", ['no motion left foot']],
    ['strong radial pulse on the left', ['circulation left hand pulse=radial quality=strong']],
    ['dorsalis pedis absent on the right', ['no circulation right foot pulse=dorsalis-pedis']],
    ['posterior tibial weak on the left foot', ['circulation left foot pulse=posterior-tibial quality=weak']],
    ['good grip on the right hand', ['motion right hand strength=strong']],
    ['grip strength four out of five on the left hand', ['motion left hand strength=4']],
    ['right foot warm and pink', ['circulation right foot warmth=warm quality=pink']],
    [
      'right hand cold, left hand warm',
      ['no circulation right hand warmth=cold', 'circulation left hand warmth=warm'],
    ],
  ])('is stated of its limb: %s', (talk, expected) => {
    expect(csm(talk)).toEqual(expected);
  });

  it.each([['my hands are freezing'], ['squeeze my hand']])(
    'is none where no limb of the patient was checked: %s',
    (talk) => {
      expect(csm(talk)).toEqual([]);
    },
  );
});

describe('a check that says itself how it is', () => {
  it.each([
    ['no deformity, sensation intact in the left hand', ['sensation left hand']],
    ['left foot no numbness and good sensation', ['sensation left foot']],
    ['no movement, sensation present right foot', ['no motion right foot', 'sensation right foot']],
    ['no tingling, can wiggle his toes right foot', ['motion right foot']],
    ['no swelling csm intact left hand', all('left', 'hand')],
  ])('is not denied with what was denied before it: %s', (talk, expected) => {
    expect(csm(talk)).toEqual(expected);
  });

  it.each([
    ['sensation not intact in the left foot', ['no sensation left foot']],
    ['no distal pulse present left foot', ['no circulation left foot']],
    ['no movement or sensation right foot', ['no motion right foot', 'no sensation right foot']],
    [
      'no pulse or sensation present in the left foot',
      ['no circulation left foot', 'no sensation left foot'],
    ],
  ])('is denied where the denial is its own: %s', (talk, expected) => {
    expect(csm(talk)).toEqual(expected);
  });
});

describe('a refill time', () => {
  it.each([
    ['cap refill two seconds in the right hand', 'circulation right hand capRefillSeconds=2'],
    ['cap refill in the left foot, two seconds', 'circulation left foot capRefillSeconds=2'],
    ['cap refill four seconds in the left foot', 'no circulation left foot capRefillSeconds=4'],
  ])('says by its length whether the circulation is intact: %s', (talk, expected) => {
    expect(read(talk)).toEqual([expected]);
    expect(statementsOf(talk)[0]?.known).toEqual({ present: 'inferred' });
  });

  it('with no limb said or in mind is a vital sign', () => {
    expect(read('cap refill three seconds')).toEqual(['capillary-refill seconds=3']);
  });
});
