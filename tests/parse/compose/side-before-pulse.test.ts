// "No left radial pulse", "good right pedal pulse": the side may stand between how a pulse is and its name. All invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a pulse with its side before its name', () => {
  checkStatements([
    ['no right radial pulse', ['no circulation right hand pulse=radial']],
    ['there is no left pedal pulse', ['no circulation left foot pulse=dorsalis-pedis']],
    ["can't feel a left femoral pulse", ['no circulation left foot pulse=femoral']],
    ['absent left radial pulse', ['no circulation left hand pulse=radial']],
    ['good left radial pulse', ['circulation left hand pulse=radial']],
    ['thready right radial pulse', ['circulation right hand pulse=radial quality=thready']],
    [
      'abdomen good, right radial pulse absent',
      ['no abnormality abdomen', 'no circulation right hand pulse=radial'],
    ],
    [
      'no right pedal pulse, strong left radial pulse',
      ['no circulation right foot pulse=dorsalis-pedis', 'note: left radial pulse'],
    ],
    [
      'no left femoral pulse but a good right radial pulse',
      ['no circulation left foot pulse=femoral', 'circulation right hand pulse=radial'],
    ],
    [
      'no right pedal pulse, left radial pulse present',
      ['no circulation right foot pulse=dorsalis-pedis', 'circulation left hand pulse=radial'],
    ],
    [
      'no right pedal pulse or left radial pulse',
      ['no circulation right foot pulse=dorsalis-pedis', 'no circulation left hand pulse=radial'],
    ],
    ['no good left radial pulse', ['no circulation left hand pulse=radial']],
  ]);
});
