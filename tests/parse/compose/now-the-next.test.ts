// "No bleeding now left knee swollen": behind a "now" the next place opens, and what stands before it is of the one before. Invented talk.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a "now" between two places', () => {
  checkStatements([
    [
      'two grazes on the right shin no bleeding now right knee no swelling',
      ['abrasion right lower-leg count=2', 'no bleeding right lower-leg', 'no swelling right knee'],
    ],
    [
      'cut on the left thigh no swelling there now the right thigh is fine',
      ['laceration left thigh', 'no swelling left thigh', 'no abnormality right thigh'],
    ],
    [
      'sting on the left calf no redness there now right calf no marks',
      [
        'sting left lower-leg',
        'no discoloration left lower-leg quality=red',
        'visit right lower-leg',
        'note: now right calf no marks',
      ],
    ],
  ]);
});

describe('a "now" that parts nothing', () => {
  checkStatements([
    ['no swelling now on the left knee', ['no swelling left knee']],
    ['no swelling now left knee', ['no swelling left knee']],
    ['left knee swollen now and the right knee is fine', ['swelling left knee', 'no abnormality right knee']],
  ]);
});
