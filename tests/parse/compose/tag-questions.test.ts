// A denial with "is there" or "have you" behind it asks; and answers that are said twice, guessed, or said with a story. Invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a denial that asks', () => {
  checkStatements([
    ['no numbness in your left heel is there darling', ['visit left heel']],
    ['no numbness in your left heel is there | no', ['visit left heel', 'no numbness left heel']],
    ['no numbness in your left heel is there | there is actually', ['visit left heel', 'numbness left heel']],
    ["you've got no pain in your jaw have you mate", ['visit jaw']],
    ["your jaw doesn't hurt does it love | no it doesn't", ['visit jaw', 'no pain jaw']],
    ['nothing in your mouth is there | no', ['visit mouth', 'no abnormality mouth']],
    ["you're not allergic to anything are you | no", ["no allergies: you're not allergic to anything: no"]],
    ["you're not allergic to anything are you | yes", ["note: you're not allergic to anything are you: yes"]],
  ]);
});

describe('an "is there" that tells', () => {
  checkStatements([
    ['pulse in the right foot is there', ['circulation right foot']],
    ['no guarding, bowel sounds are there', ['no guarding abdomen', 'note: bowel sounds']],
    [
      'no bruising of the foot and the pulse in the right foot is there',
      ['no contusion foot', 'circulation right foot'],
    ],
  ]);
});

describe('an answer said again', () => {
  checkStatements([
    ["you're not sore in your left thigh, are you? | Yes! Yes I am", ['visit left thigh', 'pain left thigh']],
    ["does your left thigh hurt | no! no it doesn't", ['visit left thigh', 'no pain left thigh']],
    [
      "you're not sore in your left thigh are you | yes",
      ['visit left thigh', "note: you're not sore in your left thigh are you: yes"],
    ],
  ]);
});

describe('where it hurts, guessed or with a story behind it', () => {
  checkStatements([
    ["where does it hurt | i guess it's my right hip", ['pain right hip']],
    [
      'where does it hurt | my left shin, it went crack as i landed',
      ['pain left lower-leg', 'mechanism: i landed', 'note: it went crack as'],
    ],
    [
      'where does it hurt | my left shin, not any more',
      ['visit left lower-leg', 'note: my left shin, not any more'],
    ],
    // Nobody asked.
    ["i think it's his left hip", ["note: i think it's his left hip"]],
  ]);
});
