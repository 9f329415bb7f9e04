// Numbers, lengths and denials in told text: what is read, and what must not be. All texts are invented.

import { describe, expect, it } from 'vitest';
import { inchesIn, lengthsIn } from '../../src/clinical/told/height.ts';
import { saidInText } from '../../src/clinical/told/mention.ts';
import { numberIn } from '../../src/clinical/told/number.ts';

/** The greatest length in feet, or null. */
const feetIn = (text: string): number | null =>
  lengthsIn(text).reduce<number | null>((most, { feet }) => Math.max(most ?? 0, feet), null);

describe('a number', () => {
  it.each([
    ['12', 12],
    ['3.5', 3.5],
    ['ten', 10],
    ['twenty five', 25],
    ['thirty-six', 36],
    ['a hundred', 100],
    ['one hundred and twenty', 120],
    ['two hundred', 200],
  ])('is read from "%s"', (text, value) => expect(numberIn(text)).toBe(value));
  it.each(['', 'some', 'about ten'])('is not read from "%s"', (text) => expect(numberIn(text)).toBeNull());
});

describe('a length', () => {
  it.each([
    ['fell ten feet', 10],
    ['a twenty five foot drop', 25],
    ['30 ft', 30],
    ['a ten-foot wall', 10],
    ['ten and a half feet', 10.5],
    ['fell six feet then another twelve feet', 12],
  ])('is read from "%s"', (text, feet) => expect(feetIn(text)).toBe(feet));
  it('is read from metres', () => {
    expect(feetIn('fell three metres')).toBeCloseTo(9.84, 2);
    expect(feetIn('fell 4 meters')).toBeCloseTo(13.12, 2);
    expect(feetIn('4m fall')).toBeCloseTo(13.12, 2);
  });
  it.each([
    'fell on his feet',
    'both feet cold',
    'ten minutes ago',
    'fell a long way',
    '4 miles',
    'foot hurts',
    'stone feet',
  ])('is not read from "%s"', (text) => expect(feetIn(text)).toBeNull());
  it('is read in inches', () => {
    expect(inchesIn('eighteen inches of intrusion')).toBe(18);
    expect(inchesIn('30 cm')).toBeCloseTo(11.8, 1);
    expect(inchesIn('inched forward')).toBeNull();
  });
});

describe('what was told', () => {
  const ejected = /\bejected\b/;
  it.each([
    ['ejected from the car', true],
    ['was ejected', true],
    ['not ejected', false],
    ['was never really ejected', false],
    ["wasn't ejected", false],
    ['not belted and ejected', true],
    ['not belted, ejected', true],
    ['no seat belt on but ejected', true],
    ['not ejected at first then ejected on the second roll', true],
    ['rolled twice', null],
  ] as const)('in "%s" is %s', (text, said) => expect(saidInText(text, ejected)).toBe(said));
});
