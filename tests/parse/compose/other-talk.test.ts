// A word with another sense finds nothing of the place in mind among talk of other things. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('talk of other things with a place in mind', () => {
  checkStatements([
    [
      'left shin swollen. the fryer burns everything',
      ['swelling left lower-leg', 'note: the fryer burns everything'],
    ],
    [
      'left shin swollen. the horn cuts out at altitude',
      ['swelling left lower-leg', 'note: the horn cuts out at altitude'],
    ],
    [
      'left shin swollen. the bull has no sense of timing',
      ['swelling left lower-leg', 'note: the bull has no sense of timing'],
    ],
    [
      "left shin swollen. there's a stiff breeze off the moor",
      ['swelling left lower-leg', "note: there's a stiff breeze off the moor"],
    ],
  ]);
});

describe('what a word of injury says of the place in mind', () => {
  checkStatements([
    [
      'left shin swollen. chainsaw cut',
      ['swelling left lower-leg', 'laceration left lower-leg', 'note: chainsaw'],
    ],
    [
      'left shin swollen. egg sized lump',
      ['swelling left lower-leg', 'swelling left lower-leg', 'note: egg sized'],
    ],
    [
      'left shin swollen. broken at the growth plate',
      ['swelling left lower-leg', 'abnormality left lower-leg quality=fracture', 'note: at the growth plate'],
    ],
    [
      'left shin swollen. cut from the crampon',
      ['swelling left lower-leg', 'laceration left lower-leg', 'note: from the crampon'],
    ],
  ]);
});

describe('a call over a rope', () => {
  checkStatements([
    ['take in two metres please', ['note: take in two metres please']],
    ['take in take in stop there', ['note: take in take in stop there']],
    ['thirty people give or take four', ['note: thirty people give or take four']],
    ['he takes ramipril', ['medications: ramipril']],
  ]);
});
