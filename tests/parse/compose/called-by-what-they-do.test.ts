// A patient who is called by what they do is the patient; "the other diver" is somebody else. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('who is called by what they do', () => {
  checkStatements([
    ['the skipper has a cut on his right palm', ['laceration right palm']],
    ['our walker has swelling of the left ankle', ['swelling left ankle']],
    ['the climber is tender over the left ribs', ['tenderness left ribs']],
    ['paddler has got pain in the right wrist and the right thumb', ['pain right wrist', 'pain right thumb']],
    ['the surfer denies neck pain', ['no pain neck']],
  ]);
});

describe('somebody else', () => {
  checkStatements([
    ['the other diver has pain in the left knee', ['note: the other diver has pain in the left knee']],
    ['the rider behind has a cut on the hand', ['note: the rider behind has a cut on the hand']],
    ['another walker has a sore knee', ['note: another walker has a sore knee']],
  ]);
});
