// The page's own words are known again, and nobody else's are taken for them. All words are invented.

import { describe, expect, it } from 'vitest';
import { isEcho, type Spoken } from '../../src/speech/echo.ts';

const SPOKEN: readonly Spoken[] = [
  { text: 'Right forearm, laceration 3 centimetres. Left knee: pain.', from: 10_000, to: 14_000 },
];
const echo = (text: string, from = 14_500): boolean => isEcho(text, from, SPOKEN);

describe('an echo', () => {
  it.each([['right forearm laceration 3 centimetres'], ['left knee pain'], ['3 centimetres, left knee']])(
    'is heard in %s',
    (text) => expect(echo(text)).toBe(true),
  );

  it.each([
    ['right knee pain'],
    ['no pain'],
    ['left knee pain and swelling'],
    ['pain'],
    ['confirmed'],
    ['[not understood, 00:12-00:15]'],
    [''],
  ])('is not heard in %s', (text) => expect(echo(text)).toBe(false));

  it('is none when it comes late or before', () => {
    expect(echo('left knee pain', 16_000)).toBe(false);
    expect(echo('left knee pain', 8_000)).toBe(false);
  });

  it('is one for as long as the page still speaks', () => {
    const still = SPOKEN.map((one) => ({ ...one, to: null }));
    expect(isEcho('left knee pain', 60_000, still)).toBe(true);
  });
});
