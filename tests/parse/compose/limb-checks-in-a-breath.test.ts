// Limb checks of two limbs in one breath, and a denial that is said twice. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('each check goes to its own limb', () => {
  checkStatements([
    [
      'left foot cool pedal pulse weak right foot warm pedal pulse strong',
      [
        'no circulation left foot warmth=cool',
        'circulation left foot pulse=dorsalis-pedis quality=weak',
        'circulation right foot warmth=warm',
        'circulation right foot pulse=dorsalis-pedis quality=strong',
      ],
    ],
    [
      'left hand warm radial good right hand warm radial gone',
      [
        'circulation left hand warmth=warm',
        'circulation left hand pulse=radial',
        'circulation right hand warmth=warm',
        'no circulation right hand pulse=radial',
      ],
    ],
    [
      'right foot cold pedal pulse absent left foot the same',
      [
        'no circulation right foot warmth=cold',
        'no circulation right foot pulse=dorsalis-pedis',
        'no circulation left foot warmth=cold',
        'no circulation left foot pulse=dorsalis-pedis',
      ],
    ],
    ['radial present right hand', ['circulation right hand pulse=radial']],
    ['pedal pulse strong right foot', ['circulation right foot pulse=dorsalis-pedis quality=strong']],
  ]);
});

describe('a denial said twice is one', () => {
  checkStatements([
    ['left foot no pedal pulse none', ['no circulation left foot pulse=dorsalis-pedis']],
    ['no pulse in the left hand none at all', ['no circulation left hand']],
    ["left wrist, radial pulse, can't find it", ['no circulation left hand pulse=radial']],
    ['left foot no sensation, none', ['no sensation left foot']],
  ]);
});

describe('a denial of what is denied stays in words', () => {
  checkStatements([
    ['the left radial is not absent', ['note: the left radial is not absent']],
    ['right foot pulse not absent', ['visit right foot', 'note: right foot pulse not absent']],
  ]);
});
