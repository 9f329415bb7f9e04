// Figures, prose and spelling as they are spoken on the radio.

import { describe, expect, test } from 'vitest';
import { sayFigures, spell } from '../../src/handoff/index.ts';
import { speak } from '../../src/handoff/radio/speak.ts';

describe('figures are spoken digit by digit', () => {
  const rows = [
    ['112', 'one one two'],
    ['9', 'niner'],
    ['0', 'zero'],
    ['104', 'one zero four'],
    ['36.8', 'three six decimal eight'],
    ['0.5', 'zero decimal five'],
    ['2000', 'two thousand'],
    ['16,000', 'one six thousand'],
    ['16500', 'one six five zero zero'],
    ['007', 'zero zero seven'],
    ['000', 'zero zero zero'],
  ] as const;
  test.each(rows)('%s is %s', (figures, words) => {
    expect(sayFigures(figures)).toBe(words);
  });
});

describe('written prose becomes words to read aloud', () => {
  const rows = [
    ['Pulse: 112 at 14:10 (unconfirmed).', 'Pulse: one one two at one four one zero, unconfirmed.'],
    [
      'Blood pressure: 118/76 at 09:00.',
      'Blood pressure: one one eight over seven six at zero niner zero zero.',
    ],
    ['Temperature: 36.8 °C.', 'Temperature: three six decimal eight degrees Celsius.'],
    ['Oxygen saturation: 96% on oxygen.', 'Oxygen saturation: niner six percent on oxygen.'],
    ['GCS: E3, V4, M6, total 13.', 'GCS: eye three, verbal four, motor six, total one three.'],
    ['GCS: E4, V not testable, M6, no total.', 'GCS: eye four, verbal not testable, motor six, no total.'],
    [
      'Pupils: left 4 mm, right 5.5 mm.',
      'Pupils: left four millimetres, right five decimal five millimetres.',
    ],
    ['Right forearm: 3 cm laceration.', 'Right forearm: three centimetre laceration.'],
    ['Right hip: pain (6 out of 10) (unconfirmed).', 'Right hip: pain, six out of ten, unconfirmed.'],
    ['Cervical spine at C5: tenderness.', 'Cervical spine at C five: tenderness.'],
    ['Glucose: 104 mg/dL.', 'Glucose: one zero four milligrams per decilitre.'],
    [
      'Medication: ibuprofen 400 mg, at 14:20.',
      'Medication: ibuprofen four zero zero milligrams, at one four two zero.',
    ],
    ['Noted: 3, 4 or 7-8 times', 'Noted: three, four or seven to eight times'],
    [
      'RR < 10 or > 29 breaths/min, SBP <90 mm Hg',
      'RR less than one zero or more than two niner breaths per minute, SBP less than niner zero millimetres of mercury',
    ],
    ['Right wrist: swelling (side carried).', 'Right wrist: swelling, side to be confirmed.'],
    [
      'Right wrist: swelling (side carried; yes or no inferred).',
      'Right wrist: swelling, side and yes or no to be confirmed.',
    ],
    ['In 2 in of snow', 'In two in of snow'],
    [
      'Age over 65, SBP <110 [Guide, 2021].',
      'Age over six five, SBP less than one one zero, Guide, two zero two one.',
    ],
  ] as const;
  test.each(rows)('%s', (written, spoken) => {
    expect(speak(written)).toBe(spoken);
  });
});

test('a word is spelt by letters and figures, accents dropped and other signs passed over', () => {
  expect(spell('Zoë-9')).toEqual(['Zulu', 'Oscar', 'Echo', 'niner']);
});
