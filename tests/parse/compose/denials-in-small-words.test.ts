// Answers in nothing but small words ("I've got none", "there aren't any"): they deny what was asked after, or stay in words. Invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a history denied in small words', () => {
  checkStatements([
    ["any regular medicines | i don't take anything", ["no medications: i don't take anything"]],
    ['any tablets | we have none', ['no medications: we have none']],
    ["any food allergies | haven't got any", ["no allergies: haven't got any"]],
    ["any food allergies | there aren't any", ["no allergies: there aren't any"]],
    ['any illnesses | never had anything like that', ['no past-history: never had anything like that']],
    ["any illnesses | none that i'm aware of, no", ["no past-history: none that i'm aware of, no"]],
    [
      "any blood thinners | i've never been on those",
      ["no medications: any blood thinners: i've never been on those"],
    ],
    ['are you on any tablets | nope i take nothing', ['no medications: i take nothing']],
    ["any medicines i don't take anything", ["no medications: i don't take anything"]],
    ["she doesn't take anything", ["no medications: she doesn't take anything"]],
    ["have you eaten | i haven't", ["no last-intake: i haven't"]],
  ]);
});

describe('a finding denied in small words', () => {
  checkStatements([
    ["any pain in your jaw | i haven't got any", ['visit jaw', 'no pain jaw']],
    ["any pain in your jaw | there isn't any", ['visit jaw', 'no pain jaw']],
    ["any pain in your jaw | there's none", ['visit jaw', 'no pain jaw']],
    ["any tingling in your left thumb | can't feel any", ['visit left thumb', 'no tingling left thumb']],
    [
      'any tingling in your left thumb | not so far as i can tell',
      ['visit left thumb', 'no tingling left thumb'],
    ],
    [
      "any bruising of the right shin | none that i've seen",
      ['visit right lower-leg', 'no contusion right lower-leg'],
    ],
    [
      "any swelling there on the left shin | i don't see any",
      ['visit left lower-leg', 'no swelling left lower-leg'],
    ],
    ["any pain in your jaw | i don't have any but my ear hurts", ['visit jaw', 'no pain jaw', 'pain ear']],
    ['any pain in your jaw | not at the moment', ['visit jaw', 'no pain jaw']],
    ["any pain in your jaw | i've got some", ['visit jaw', 'pain jaw']],
  ]);
});

describe('small words that deny something else, or nothing', () => {
  checkStatements([
    [
      'any pain in your jaw | never felt anything like it',
      ['visit jaw', 'note: any pain in your jaw: never felt anything like it'],
    ],
    [
      'any pain in your jaw | never had any until today',
      ['visit jaw', 'note: any pain in your jaw: never had any until today'],
    ],
    ['any tablets | i take nothing but vitamins', ['medications: i take nothing but vitamins']],
    [
      'any ringing in the ears no any jaw pain little bit',
      ['no symptoms: ringing in the ears: no', 'pain jaw severity=mild'],
    ],
    [
      "any pain in your jaw | i don't like it here",
      ['visit jaw', "note: any pain in your jaw: i don't like it here"],
    ],
    [
      "any pain in your jaw | i'm not from round here",
      ['visit jaw', "note: any pain in your jaw: i'm not from round here"],
    ],
    [
      'any pain in your jaw | i have none left',
      ['visit jaw', 'note: any pain in your jaw: i have none left'],
    ],
    ['any tablets | i have none with me', ['medications: i have none with me']],
    [
      "any food allergies | i don't have any apart from kiwi",
      ["allergies: i don't have any apart from kiwi"],
    ],
    ["any food allergies | i don't take anything", ["no medications: i don't take anything"]],
    ["i don't have any feeling in my right foot", ['no sensation right foot']],
    ["left elbow swollen i can't feel any crepitus", ['swelling left elbow', 'no crepitus left elbow']],
    ['any food allergies | no, i love prawns', ['allergies: no, i love prawns']],
  ]);
});
