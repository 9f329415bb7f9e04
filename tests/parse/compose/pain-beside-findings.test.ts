// "Deformed and swollen, pain eight out of ten": the number is the pain's, and no finding's that stands before it. All invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a pain score behind what is no pain', () => {
  checkStatements([
    [
      'left elbow bruised and swollen, pain seven out of ten',
      ['contusion left elbow', 'swelling left elbow', 'pain-score score=7'],
    ],
    ['right shin deformed, pain is nine out of ten', ['deformity right lower-leg', 'pain-score score=9']],
    [
      'left ankle swollen and tender, pain score four',
      ['swelling left ankle', 'tenderness left ankle', 'pain-score score=4'],
    ],
  ]);
});

describe('a pain score behind pain, and a bare scale behind tenderness', () => {
  checkStatements([
    ['pain in the right hip, pain score six', ['pain right hip severity=6']],
    ['left shoulder painful, eight out of ten', ['pain left shoulder severity=8']],
    ['right knee tender, five out of ten', ['tenderness right knee severity=5']],
  ]);
});
