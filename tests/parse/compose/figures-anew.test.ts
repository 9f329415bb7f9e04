// A figure of a sign put right in the breath of the sign, with more talk behind it. All talk is invented.

import { describe } from 'vitest';
import { checkCorrections, checkStatements } from '../rows.ts';

describe('a figure put right, and talk behind it', () => {
  checkCorrections([
    ['pulse sixty six make that seventy six his sleeve was in the way', ['number value=76 ← last']],
    ['pulse sixty six make that seventy six i was counting the drips', ['number value=76 ← last']],
    ['resps one four no one eight sorry the engine shook', ['number value=18 ← last']],
    ['saturation eighty four no ninety four percent sorry cold finger', ['number value=94 ← last']],
    ['saturation eighty four no ninety four percent', ['number value=94 ← last']],
    ['saturation eighty four | no ninety four percent', ['number value=94 ← last']],
    ['saturation eighty four on air hold on eighty eight', ['number value=88 ← last']],
    ['pulse one ten | hang on one thirty', ['number value=130 ← last']],
    [
      'temp thirty six point six | no thirty five point six not thirty six',
      ['statement temperature celsius=35.6 ← kind=vital vital=temperature'],
    ],
    [
      'resps twelve | no twenty not twelve',
      ['statement respirations rate=20 ← kind=vital vital=respirations'],
    ],
    [
      'pressure one ten over sixty no one thirty over sixty sorry i bumped it',
      ['statement blood-pressure systolic=130 diastolic=60 ← kind=vital vital=blood-pressure'],
    ],
    ['pulse sixty six make that seventy six and the chin is cut', ['number value=76 ← last']],
    [
      'saturation eighty four no ninety one on eight litres',
      ['statement oxygen-saturation percent=91 onOxygen=true ← kind=vital vital=oxygen-saturation'],
    ],
    // Must not: what is counted in something else, is far from the sign, or is no figure of it.
    ['saturation ninety four no four litres', []],
    ['saturation ninety four hang on two minutes', []],
    ['pulse ninety make that three sleds up here', []],
    ['pulse ninety | hang on three', []],
    ['pulse ninety no two ribs broken', []],
    ['saturation ninety four no ninety percent burns', []],
    ['burn on the left thigh about ten percent | no twelve percent', []],
    ['pulse ninety no more than a hundred', []],
  ]);
});

describe('the talk behind a figure put right', () => {
  checkStatements([
    [
      'pulse sixty six make that seventy six my knee was shaking',
      ['pulse rate=66', 'note: my knee was shaking'],
    ],
    [
      'pulse sixty six make that seventy six the left knee is swollen',
      ['pulse rate=66', 'swelling left knee'],
    ],
    [
      'saturation eighty four no ninety four percent sorry cold',
      ['oxygen-saturation percent=84', 'note: sorry cold'],
    ],
  ]);
});
