// Figures and letters on the radio, against the published lists.

import { describe, expect, test } from 'vitest';
import { SOUNDS, SPELLING_ALPHABET, sayFigures, spell } from '../../src/handoff/index.ts';

const plain = (sounds: string): string => sounds.toLowerCase().replaceAll('-', '');

// Source: a US Navy training manual's page quoting ACP 125 (read). Its row for 12 ("Twelve") contradicts its own rule
// of speaking digit by digit and is left out.
describe('figures are pronounced as ACP 125 has them', () => {
  const rows = [
    ['44', 'Fower Fower'],
    ['90', 'Niner Ze-ro'],
    ['136', 'Wun Tree Six'],
    ['500', 'Fife Ze-ro Ze-ro'],
    ['1,478', 'Wun Fow-er Seven Ait'],
    ['7,000', 'Seven Tou-zand'],
    ['16,000', 'Wun Six Tou-zand'],
    ['812,681', 'Ait Wun Too Six Ait Wun'],
  ] as const;
  test.each(rows)('%s is %s', (figures, sounds) => {
    expect(plain(sayFigures(figures, SOUNDS))).toBe(plain(sounds));
  });
});

// Source: maritimesa.org (read): 124249 is "wun, too, forwer, too, forwer, niner"; its spelling "forwer" for "fower".
test('a second source agrees on 124249', () => {
  expect(plain(sayFigures('124249', SOUNDS))).toBe(
    'wun, too, forwer, too, forwer, niner'.replaceAll(',', '').replaceAll('forwer', 'fower'),
  );
});

// Source: the same page (read): "0 is always spoken as zero, never oh"; decimal is DAY-SEE-MAL.
test('zero and the decimal point have their own words', () => {
  expect(sayFigures('30.5')).toBe('three zero decimal five');
  expect(sayFigures('30.5', SOUNDS)).toBe('TREE ZE-RO DAY-SEE-MAL FIFE');
});

// Source: ICAO Annex 10 volume II figure 5-1; ITU Radio Regulations appendix 14 (read).
test('the spelling alphabet is the international one, in order', () => {
  expect(SPELLING_ALPHABET.join(', ')).toBe(
    'Alfa, Bravo, Charlie, Delta, Echo, Foxtrot, Golf, Hotel, India, Juliett, Kilo, Lima, Mike, November, Oscar, Papa, Quebec, Romeo, Sierra, Tango, Uniform, Victor, Whiskey, X-ray, Yankee, Zulu',
  );
  expect(spell('abcdefghijklmnopqrstuvwxyz')).toEqual([...SPELLING_ALPHABET]);
});
