// "The other arm", "the left one", "on the left? yes": the side that words about a side give, and never the one just left. Invented.

import { describe } from 'vitest';
import { checkCorrections, checkStatements } from '../rows.ts';

describe('the other side', () => {
  checkStatements([
    ['left elbow hurts | now the other arm', ['pain left elbow', 'visit right arm']],
    [
      'right knee is bruised | does the other knee hurt | no',
      ['contusion right knee', 'visit left knee', 'no pain left knee'],
    ],
    ['left hip and the other hip fine', ['no abnormality left hip', 'no abnormality right hip']],
    ['right leg is fine, the other one has a bruise', ['no abnormality right leg', 'contusion left leg']],
    // Must not: with nothing one-sided before it nobody knows which is the other.
    ['both feet warm | the other foot is numb', ['circulation both foot warmth=warm', 'numbness foot']],
  ]);
});

describe('a limb turned by a side straight before its check', () => {
  checkStatements([
    [
      'right hand warm, the left one is cold',
      ['circulation right hand warmth=warm', 'no circulation left hand warmth=cold'],
    ],
    [
      'left foot cool, right warm',
      ['no circulation left foot warmth=cool', 'circulation right foot warmth=warm'],
    ],
  ]);
});

describe('a side told after a finding that had none', () => {
  checkCorrections([
    ['my shoulder hurts | the right one', ['side side=right ← last']],
    ['my ankle is numb | on the left? | yeah', ['side side=left ← last']],
    ['my ankle is swollen | is it the left | no, the right', ['side side=right ← last']],
    [
      "scrape on the left elbow | strike the left elbow, it's the right elbow",
      ['side side=right ← site=elbow side=left'],
    ],
    [
      'left knee sore | spine tender at t eleven | actually it is the right knee, not the left',
      ['side side=right ← site=knee side=left'],
    ],
    // Must not: what has its side keeps it, and a bare "no" does not say that it is the other.
    ['left shoulder hurts | on the right? | yes', []],
    ['my ankle is numb | on the left? | no', []],
  ]);
});

describe('what is said next', () => {
  checkStatements([
    [
      'shins, left one fine, right one bruised | sore as well',
      ['no abnormality left lower-leg', 'contusion right lower-leg', 'pain right lower-leg'],
    ],
    [
      'hips, right one fine, left one swollen | is it painful | a lot',
      ['no abnormality right hip', 'swelling left hip', 'pain left hip severity=severe'],
    ],
    // A question put again on the other side, and what comes after it.
    [
      'left heel tender? | yes | and on the right? | no | the calf? | yes',
      [
        'visit left heel',
        'tenderness left heel',
        'no tenderness right heel',
        'visit right lower-leg',
        'tenderness right lower-leg',
      ],
    ],
  ]);
});

describe('a limb check answered side by side', () => {
  checkStatements([
    // The digit that was asked after stays that digit, and two sides become one but once.
    [
      'can you feel your big toes? left yes, right no',
      ['sensation left foot digit=big-toe', 'no sensation right foot digit=big-toe'],
    ],
    ['can you wiggle your toes? right yes, left no', ['motion right foot', 'no motion left foot']],
    [
      'right wrist deformed | feel this? | no | and on the left? | yes',
      ['deformity right wrist', 'no sensation right hand', 'sensation left hand'],
    ],
  ]);
});

describe('an answer that names a place of one’s own', () => {
  checkStatements([
    ['left hip sore | any tingling? | in my right hand', ['pain left hip', 'tingling right hand']],
  ]);
});
