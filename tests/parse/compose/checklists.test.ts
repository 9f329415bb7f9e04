// Lists in which each thing has its own answer behind it, and lists that have not. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a list with an answer behind each thing', () => {
  checkStatements([
    [
      'right elbow pain no swelling no bruising yes',
      ['no pain right elbow', 'no swelling right elbow', 'contusion right elbow'],
    ],
    [
      'left calf, tenderness yes, redness no, swelling no',
      [
        'tenderness left lower-leg',
        'no discoloration left lower-leg quality=red',
        'no swelling left lower-leg',
      ],
    ],
    ['belly rigid no distended no', ['no rigidity abdomen', 'no distension abdomen']],
    ['any dizziness or nausea | dizziness yes, nausea no', ['symptoms: dizziness', 'no symptoms: nausea']],
    ['right foot pulse present sensation absent', ['circulation right foot', 'no sensation right foot']],
    ['chest pain no back pain yes', ['no pain chest', 'pain back']],
  ]);
});

describe('one thing that a dash or a colon parts from its answer', () => {
  checkStatements([
    ['left heel: redness: no', ['visit left heel', 'no discoloration left heel quality=red']],
    ['right forearm | bruising - nope', ['visit right forearm', 'no contusion right forearm']],
    [
      'quick list for the left hip pain yes bruising no',
      ['pain left hip', 'no contusion left hip', 'note: quick list for'],
    ],
  ]);
});

describe('a list with a "no" before its things', () => {
  checkStatements([
    [
      'right elbow pain no swelling no bruising',
      ['pain right elbow', 'no swelling right elbow', 'no contusion right elbow'],
    ],
    [
      'left calf tender no redness',
      ['tenderness left lower-leg', 'no discoloration left lower-leg quality=red'],
    ],
  ]);
});
