// Answers that hold a figure: which of their figures answers, and which count something else. All talk is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('the score of pain', () => {
  checkStatements([
    [
      'how bad is the pain out of ten | i broke two ribs once so i would call this eight',
      ['pain-score score=8'],
    ],
    ['what is your pain from zero to ten | well i raised four sons so maybe five', ['pain-score score=5']],
    ['pain in my left hip | out of ten | a six', ['pain left hip', 'pain-score score=6']],
    [
      'does it move anywhere | down my arm | and out of ten | four',
      ['radiation: down my arm', 'pain-score score=4'],
    ],
    [
      'how bad is the pain out of ten | it was nine now it is three',
      ['pain-score score=3', 'note: it was nine'],
    ],
    // Must not: a number of other things, and no talk of pain.
    ['how bad is the pain out of ten | i have three dogs', ['note: i have three dogs']],
    ['how bad is the pain out of ten | two minutes', ['note: two minutes']],
    ['any allergies | no | out of ten | six', ['no allergies: no', 'note: out of ten', 'note: six']],
  ]);
});

describe('the age', () => {
  checkStatements([
    [
      'how old are you | i am fifty two my nephew there is ten',
      ['age: i am fifty two years=52', 'note: my nephew there is ten'],
    ],
    [
      'how old are you | i am forty four my husband is fifty',
      ['age: i am forty four years=44', 'note: my husband is fifty'],
    ],
    ['how old are you mate | i am eighty can you believe it', ['age: i am eighty years=80']],
    // Must not: other numbers than years, and those of somebody else.
    ['how old is your daughter | six', ['note: six']],
    ['how old are you | i have four sons', ['note: i have four sons']],
    ['how old are you | i am two days from home', ['note: i am two days from home']],
    ['i am fifty two my nephew there is ten', ['note: i am fifty two my nephew there is ten']],
    ['normally she is around fifty five', ['note: normally she is around fifty five']],
  ]);
});

describe('what a sign usually is', () => {
  checkStatements([
    ['what does your pulse sit at | fifty', ['pulse rate=50']],
    [
      'what is your pressure usually | about one thirty over eighty i think',
      ['note: what is your pressure usually: about one thirty over eighty i think'],
    ],
    ['what is her normal pulse | fifty two', ['note: what is her normal pulse: fifty two']],
    ['usually it is like one thirty over eighty', ['note: usually it is like one thirty over eighty']],
    // Must not: what it is now, and another question.
    [
      'what is your pressure usually | one thirty over eighty | and it is one ten over sixty now',
      [
        'note: what is your pressure usually: one thirty over eighty',
        'blood-pressure systolic=110 diastolic=60',
      ],
    ],
    ['what is your pulse | fifty two', ['pulse rate=52']],
  ]);
});

describe('the words beside a rate', () => {
  checkStatements([
    ['what is his pulse | eighty and regular', ['pulse rate=80 quality=regular']],
    ['what are his sats | ninety one percent', ['oxygen-saturation percent=91']],
    // Must not: any word as what the pulse is like.
    ['what is his pulse | the strap says eighty', ['pulse rate=80']],
  ]);
});
