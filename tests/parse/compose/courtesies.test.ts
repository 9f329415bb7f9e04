// An "okay" beside what was said calls nothing normal, and a "right" that opens is no side. Invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('an okay that closes', () => {
  checkStatements([
    ['sacrum is solid, okay', ['no instability sacrum']],
    [
      'both elbows are grazed, left worse than right, good',
      ['abrasion both elbow', 'note: left worse than right'],
    ],
    ['no pain in the jaw, okay', ['no pain jaw']],
    [
      "he's guarding the left arm, won't let me bend it, okay",
      ['guarding left arm', "note: won't let me bend it, okay"],
    ],
    // Of a place alone, or of a check that does not say how it was, it is said.
    ['elbows, good', ['visit both elbow']],
    ['sensation in the right foot, fine', ['sensation right foot']],
    ['which arm hurts? the left, okay', ['pain left arm']],
  ]);
});

describe('a word that opens what is said', () => {
  checkStatements([
    ['all right, shins and feet grazed', ['abrasion both lower-leg', 'abrasion both foot']],
    ['right, the left wrist is sore', ['pain left wrist']],
    ['right, one of his hips is sore, the left', ['pain left hip']],
    ['right, back pain and no weakness', ['pain back', 'no weakness back']],
    // It may be the side of the ear: it stays open.
    ['right, ear is bleeding', ['bleeding ear']],
  ]);
});

describe('two sides that are no pair', () => {
  checkStatements([
    ['ribs bruised on the right, and left hip sore', ['contusion right ribs', 'pain left hip']],
    ['cheek grazed on the left and the right ear is bleeding', ['abrasion left cheek', 'bleeding right ear']],
    ['cuts on the left and right wrist', ['laceration both wrist']],
    ['the left and right elbows are sore', ['pain both elbow']],
  ]);
});

describe('what comes last', () => {
  checkStatements([
    ['just a scrape on the forearm, left', ['abrasion left forearm']],
    ['cut under the eye and another on the chin', ['laceration eye', 'laceration jaw']],
    [
      'cheekbone grazed on the right, shoulders fine',
      ['abrasion right cheek', 'no abnormality both shoulder'],
    ],
    ['elbow bent', ['visit elbow', 'note: elbow bent']],
    ['shin bent', ['deformity lower-leg']],
    [
      'wrist: outside part sore, inside part fine',
      ['visit wrist', 'pain wrist part=lateral', 'note: inside part fine'],
    ],
    ['hips fine to press right knee sore', ['no abnormality both hip', 'pain right knee', 'note: to press']],
    ["probe won't read hands too cold", ['no circulation both hand warmth=cold', "note: probe won't read"]],
  ]);
});
