// Words of denial that do not deny, and denials in other words: "won't stop bleeding", "not too bad", "nothing guarding". Invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

const check = (rows: readonly (readonly [string, readonly string[]])[]) =>
  it.each(rows)('%s', (talk, means) => {
    expect(read(talk)).toEqual(means);
  });

describe('nothing, with a finding and no more', () => {
  check([
    [
      'belly now. it is soft, nothing distended.',
      ['visit abdomen', 'no rigidity abdomen', 'no distension abdomen'],
    ],
    ['left shin, nothing bleeding', ['no bleeding left lower-leg']],
    // Must not: here the "nothing" is all that is said of the first place.
    ['left knee nothing swelling on the ankle', ['no abnormality left knee', 'swelling left ankle']],
  ]);
});

describe('bleeding that stops and that does not', () => {
  check([
    ['the scalp wound has stopped bleeding', ['laceration skull', 'bleeding skull quality=controlled']],
    [
      "cut on the right hand | it won't stop bleeding",
      ['laceration right hand', 'bleeding right hand quality=active'],
    ],
    [
      "left thigh | we can't control the bleeding",
      ['visit left thigh', 'bleeding left thigh quality=active'],
    ],
    ['left thigh | not bleeding any more', ['visit left thigh', 'no bleeding left thigh']],
  ]);
});

describe('a no that is none', () => {
  check([
    [
      "right wrist, is that sore | it's not tender, not swollen",
      ['visit right wrist', 'no tenderness right wrist', 'no swelling right wrist'],
    ],
    [
      "feel your calf, tell me if it's sore. no. no. yes there.",
      ['visit lower-leg', 'note: no. no. yes there'],
    ],
    ["does the right knee hurt | it's not too bad", ['visit right knee', 'pain right knee severity=mild']],
  ]);
});

describe('a no with nothing that it answers', () => {
  check([
    ['knee — no. shin — no.', ['visit knee', 'visit lower-leg', 'note: knee — no', 'note: shin — no']],
    ['did you hit your head? no', ['note: did you hit your head: no']],
  ]);
});

describe('a denial before what is there somewhere else', () => {
  check([
    [
      'no deformity of the spine, no swelling, sore at about t nine',
      ['no deformity spine', 'no swelling spine', 'pain thoracic-spine level=T9'],
    ],
  ]);
});

describe('a pulse of the limb just named', () => {
  check([
    ['right hand: pulse present', ['visit right hand', 'circulation right hand']],
    ['right foot, pulse is weak', ['circulation right foot quality=weak']],
    ['left foot, pulse there, sensation there', ['circulation left foot', 'sensation left foot']],
    // Must not: with its rate it is a vital sign, and with no limb before it too.
    ['left hand. pulse is ninety', ['visit left hand', 'pulse rate=90']],
    ['pulse is weak', ['pulse quality=weak']],
  ]);
});
