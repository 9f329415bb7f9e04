// A drug that was given again, and CPR, in the few words of the radio. The talk is invented.

import { expect, test } from 'vitest';
import { reportsOf } from './from-talk.ts';

const SHOCKED = [
  'thirty year old man stung by hornets ten minutes ago',
  'pulse one thirty two',
  'blood pressure seventy six over forty',
  'sats eighty eight on air',
  'resps thirty four',
];
const GIVEN = [
  '[00:05:00] adrenaline half a milligram i m',
  '[00:10:00] second dose of adrenaline half a milligram i m',
  '[00:14:00] chlorphenamine ten milligrams i v',
];

test('a second dose of a drug is told with its time', () => {
  const { radio } = reportsOf(...SHOCKED, ...GIVEN);
  expect(radio).toMatch(/Adrenaline(,? at zero niner one five and)? again at zero niner two zero/);
  expect(radio).not.toMatch(/Adrenaline half a milligram/i);
});

test.each([
  ['ketamine twenty milligrams i v', 'ondansetron four milligrams i v'],
  ['aspirin three hundred milligrams chewed', 'ibuprofen four hundred milligrams chewed'],
  ['paracetamol one gram with a sip of squash', 'ibuprofen four hundred with a sip of squash'],
])('"%s" and "%s" are two drugs', (...lines) => expect(reportsOf(...lines).radio).not.toMatch(/ again at /));

test('no count is told, since a dose may be kept in words alone', () => {
  const { radio } = reportsOf(
    'salbutamol five milligrams nebulised',
    '[00:10:00] second salbutamol five milligrams nebulised',
    '[00:20:00] and some more of the salbutamol, half of it spilt',
  );
  expect(radio).toMatch(/Salbutamol.* again at zero niner two zero/);
  expect(radio).not.toMatch(/times|last at/);
});

test('what came of a stopped heart is told with its time', () => {
  const { radio } = reportsOf(
    'pulse forty',
    '[00:10:00] starting c p r',
    '[00:12:00] shock given',
    '[00:14:00] return of spontaneous circulation',
  );
  expect(radio).toContain('CPR at zero niner two zero');
  expect(radio).toContain('Shock given at zero niner two two');
  expect(radio).toContain('Return of spontaneous circulation at zero niner two four');
});
