// Circulation, sensation and motion are stated of the limb's ends that were meant, as present or absent. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';
import { checkStatements } from '../rows.ts';

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

describe('a list of checks', () => {
  it.each([
    ['right foot has good pulse sensation and movement', all('right', 'foot')],
    ['no pulse sensation or movement in the left foot', all('left', 'foot', 'no ')],
    [
      'strong radial, good sensation, good movement in the left hand',
      ['circulation left hand pulse=radial quality=strong', 'sensation left hand', 'motion left hand'],
    ],
    [
      'left foot normal sensation and movement but no pulse',
      ['sensation left foot', 'motion left foot', 'no circulation left foot'],
    ],
  ])('shares what is said of its first member or its last: %s', (talk, expected) => {
    expect(csm(talk).toSorted()).toEqual(expected.toSorted());
  });

  it('keeps in words a member of which nothing was said', () => {
    expect(read('left foot, sensation but no movement')).toEqual(['no motion left foot', 'note: sensation']);
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

describe('a pulse at a limb, without a rate', () => {
  it.each([
    ["can't find a pulse in the left foot", ['no circulation left foot']],
    ['unable to palpate a pulse at the right wrist', ['no circulation right hand']],
    ["there's a pulse in the right hand", ['circulation right hand']],
    ['the left hand still has a good pulse', ['circulation left hand']],
    ['the pulse in the left hand is weak', ['circulation left hand quality=weak']],
    ["he's lost the right radial", ['no circulation right hand pulse=radial']],
    // The word that denies it stands before the limb or before its side, and the next limb has a check of its own.
    ['pulse absent right foot', ['no circulation right foot']],
    ['wrist pulse absent on the left', ['no circulation left hand']],
    [
      'right foot pulse absent, left foot pulse present',
      ['no circulation right foot', 'circulation left foot'],
    ],
  ])('is a check of that limb: %s', (talk, expected) => {
    expect(read(talk, 'csm', 'finding')).toEqual(expected);
  });

  it('with a rate is a vital sign', () => {
    expect(read('pulse eighty eight at the left wrist', 'csm', 'vital')).toEqual(['pulse rate=88']);
  });
});

describe('the other side', () => {
  it.each([
    [
      'femoral pulse strong on the left, weak on the right',
      [
        'circulation left foot pulse=femoral quality=strong',
        'circulation right foot pulse=femoral quality=weak',
      ],
    ],
    [
      'radial pulse present on the left but absent on the right',
      ['circulation left hand pulse=radial', 'no circulation right hand pulse=radial'],
    ],
    // What the other side lacks is there on the first, though nobody says so; it must never be denied of that.
    ['pulse in the right foot, none in the left', ['circulation right foot', 'no circulation left foot']],
    ['sensation left hand, none right', ['sensation left hand', 'no sensation right hand']],
    [
      'weak pulse right foot, absent left',
      ['circulation right foot quality=weak', 'no circulation left foot'],
    ],
    ['she can move her left hand but not the right', ['motion left hand', 'no motion right hand']],
    ['grip strong left, weak right', ['motion left hand strength=strong', 'motion right hand strength=weak']],
    [
      'sensation intact on the right, reduced on the left hand',
      ['sensation right hand', 'no sensation left hand quality=decreased'],
    ],
    [
      'cap refill in the right foot is three seconds, left is one',
      ['no circulation right foot capRefillSeconds=3', 'circulation left foot capRefillSeconds=1'],
    ],
  ])('takes what is said of it: %s', (talk, expected) => {
    expect(read(talk, 'csm', 'finding', 'note')).toEqual(expected);
  });

  it.each([
    ['swelling of the left wrist, none on the right', ['swelling left wrist', 'no swelling right wrist']],
    ['left hip tender but not the right', ['tenderness left hip', 'no tenderness right hip']],
    ['left shin hurts, right does not', ['pain left lower-leg', 'no pain right lower-leg']],
    [
      'tenderness in the left elbow | none on the right',
      ['tenderness left elbow', 'no tenderness right elbow'],
    ],
    // Which of the two was meant is not said.
    ['swelling of the left wrist, not the right', ['swelling left wrist', 'note: not the right']],
    [
      'no swelling of the left wrist, absent on the right',
      ['no swelling left wrist', 'note: absent on the right'],
    ],
  ])('is denied what was found on the first: %s', (talk, expected) => {
    expect(read(talk, 'finding', 'note')).toEqual(expected);
  });
});

describe('cold after whole limbs', () => {
  checkStatements([
    ['legs fine | cold though', ['no abnormality both leg', 'note: cold though']],
    // Must not: a hand or a foot in mind is what is cold.
    ['right foot swollen | cold', ['swelling right foot', 'no circulation right foot warmth=cold']],
  ]);
});
