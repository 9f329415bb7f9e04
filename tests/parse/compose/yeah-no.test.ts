// "Yeah, no", "no, yeah, there is", radio words, and a "no" that its own next words gainsay. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('an answer of a yes and a no', () => {
  checkStatements([
    ["any pain in your chest | yeah, no, it's fine", ['visit chest', 'no pain chest']],
    ['any pain in your chest | yeah nah', ['visit chest', 'no pain chest']],
    ['any numbness in the left heel | no yeah there is', ['visit left heel', 'numbness left heel']],
    [
      'any numbness in the left heel | nah, yeah, a bit',
      ['visit left heel', 'numbness left heel severity=mild'],
    ],
    ["is your jaw okay | yeah no it's fine", ['visit jaw', 'no abnormality jaw']],
    ["is your jaw okay | no it's fine", ['visit jaw', 'no abnormality jaw']],
    ["left foot, can you feel this | yeah no i can't", ['visit left foot', 'no sensation left foot']],
    ['any food allergies | yeah no none', ['no allergies: yeah no none']],
    ['any pain in your chest | yeah, no pain now', ['visit chest', 'no pain chest']],
  ]);
});

describe('such an answer that may be either', () => {
  checkStatements([
    ['any pain in your chest | no yeah', ['visit chest', 'note: any pain in your chest: no yeah']],
    ['any pain in your chest | yes and no', ['visit chest', 'note: yes and no']],
    [
      'any pain in your chest | no, yes there',
      ['visit chest', 'note: any pain in your chest: no, yes there'],
    ],
    [
      'any pain in your chest | yeah no it really hurts',
      ['visit chest', 'note: any pain in your chest: yeah no it really hurts'],
    ],
    ['any pain in your chest | no it hurts', ['visit chest', 'note: any pain in your chest: no it hurts']],
    [
      'any pain in your chest | yeah nothing too bad',
      ['visit chest', 'pain chest', 'note: yeah nothing too bad'],
    ],
    [
      "left foot, can you feel this | that's fine",
      ['visit left foot', "note: can you feel this: that's fine"],
    ],
    ['is your jaw okay | yeah no', ['visit jaw', 'note: is your jaw okay: yeah no']],
    // Two questions, two answers.
    ['any jaw pain? any hip pain? yes no', ['pain jaw', 'no pain hip']],
  ]);
});

describe('two noes', () => {
  checkStatements([
    [
      "any pain in your right elbow | no no that one's good it's the elbow i throw with",
      [
        'visit right elbow',
        'no pain right elbow',
        'visit right elbow',
        "note: that one's good it's the elbow i throw with",
      ],
    ],
    ['any pain in your hip | no no, my shin', ['visit hip', 'no pain hip', 'pain lower-leg']],
    ['any pain in your hip | no no pain', ['visit hip', 'no pain hip']],
    ["any pain in your hip | no it doesn't hurt", ['visit hip', 'no pain hip']],
  ]);
});

describe('radio words', () => {
  checkStatements([
    ['is the left wrist deformed over | affirm', ['visit left wrist', 'deformity left wrist']],
    ['is the left wrist deformed over | negative over', ['visit left wrist', 'no deformity left wrist']],
    ['is the left wrist deformed over | roger', ['visit left wrist']],
  ]);
});
