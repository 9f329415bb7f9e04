// Skin and pupils told in short pieces: each word with its own verb, and what the pupils are like behind their sizes. All talk is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('the skin, each word with its verb', () => {
  checkStatements([
    ['The skin, it is warm, it is dry.', ['skin temperature=warm moisture=dry']],
    ["her skin it's pale and it's sweaty", ['skin color=pale moisture=diaphoretic']],
    ['skin it feels cold it feels clammy', ['skin temperature=cold moisture=clammy']],
    // Must not: other things than the skin, one place of it, the weather.
    ['The tent, it is cold, it is wet.', ['note: The tent, it is cold, it is wet']],
    ['The skin, it is split.', ['note: The skin, it is split']],
    ["the skin it's red around the sting", ["note: the skin it's red around the sting"]],
    ["skin pale it's wet in here", ['skin color=pale', "note: it's wet in here"]],
  ]);
});

describe('what the pupils are like, behind their sizes', () => {
  checkStatements([
    ['Left pupil 5 millimeters, right pupil 2. Unequal.', ['pupils leftMm=5 rightMm=2 equal=false']],
    ['pupils left five right two not equal', ['pupils leftMm=5 rightMm=2 equal=false']],
    [
      'pupils left three right three. equal and reactive',
      ['pupils leftMm=3 rightMm=3 reactive=true equal=true'],
    ],
    [
      'pupils left five right two | they are unequal',
      ['pupils leftMm=5 rightMm=2', 'pupils leftMm=5 rightMm=2 equal=false'],
    ],
    // Must not: what the sizes belie, another thing, something said between, and a side that stands behind.
    ['pupils left five right two. equal', ['pupils leftMm=5 rightMm=2', 'note: equal']],
    [
      'pupils left five right two. grips unequal',
      ['pupils leftMm=5 rightMm=2', 'motion both hand strength=unequal'],
    ],
    [
      'pupils left five right two | left knee swollen | unequal',
      ['pupils leftMm=5 rightMm=2', 'swelling left knee', 'note: unequal'],
    ],
    [
      'pupils left five right two, sluggish on the left',
      ['note: pupils left five right two, sluggish on the left'],
    ],
  ]);
});
