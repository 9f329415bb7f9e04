// Care that names the wound it is for, and what "clean" is said of. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('the wound that care is for', () => {
  checkStatements([
    ['rinsed the scrape on his left forearm', ['abrasion left forearm', 'irrigation left forearm']],
    ['washed out the gash on the right calf', ['laceration right lower-leg', 'irrigation right lower-leg']],
    [
      'keeping pressure on the laceration on her left thigh',
      ['laceration left thigh', 'direct-pressure left thigh'],
    ],
    ['packed the gash in his right groin', ['laceration right groin', 'wound-packing right groin']],
    ['cooled the burn on her right forearm', ['burn right forearm', 'cooling right forearm']],
  ]);
});

describe('a wound that is told no second time, or not at all', () => {
  checkStatements([
    ['right heel grazed | cleaned the graze', ['abrasion right heel', 'irrigation']],
    ['flushed the left eye', ['irrigation left eye']],
    ['packed the wound in the right buttock', ['wound-packing right buttock']],
    [
      'have not rinsed the graze on the right elbow',
      ['visit right elbow', 'note: have not rinsed the graze on the right elbow'],
    ],
    [
      'we need to rinse the graze on the right elbow',
      ['note: we need to rinse the graze on the right elbow'],
    ],
  ]);
});

describe('a word that is said of the thing behind it', () => {
  checkStatements([
    ['rinsed out the left ear with clean snow melt', ['irrigation left ear', 'note: with clean snow melt']],
    ["left ankle's in good order", ['visit left ankle', "note: left ankle's in good order"]],
    [
      "right hand bandaged and it's got a clean glove over it",
      ['bandage right hand', "note: it's got a clean glove over it"],
    ],
  ]);
});

describe('the same words said of the place', () => {
  checkStatements([
    ['left ankle looks clean', ['no abnormality left ankle']],
    ['left ankle is good and the knee is fine', ['no abnormality left ankle', 'no abnormality left knee']],
    ['right hip with good range of motion', ['no limited-motion right hip']],
  ]);
});
