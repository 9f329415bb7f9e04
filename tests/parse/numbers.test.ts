import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readNumbers, readTwoDigits } from '../../src/parse/numbers/index.ts';

const split = (text: string): readonly string[] => text.split(' ');
const values = (text: string, loose = false): readonly number[] =>
  readNumbers(split(text), 0, { loose }).map(({ value }) => value);

describe('a number is read as it is said', () => {
  test.each([
    ['88', 88],
    ['98.6', 98.6],
    ['1,200', 1200],
    ['one eighteen', 118],
    ['one twelve', 112],
    ['two twenty', 220],
    ['one thirty five', 135],
    ['a hundred and four', 104],
    ['one hundred four', 104],
    ['hundred and four', 104],
    ['1 hundred and 4', 104],
    ['one oh four', 104],
    ['one o four', 104],
    ['one zero four', 104],
    ['one oh oh', 100],
    ['a hundred', 100],
    ['thirty seven', 37],
    ['ninety eight point six', 98.6],
    ['ninety eight decimal six', 98.6],
    ['98 point 6', 98.6],
    ['one oh one point five', 101.5],
    ['thirty eight point oh', 38],
    ['thirty six point two five', 36.25],
    ['thirty six point twenty five', 36.25],
    ['five point oh five', 5.05],
    ['one thousand two hundred', 1200],
    ['one thousand two hundred and fifty', 1250],
    ['a thousand', 1000],
    ['twelve hundred', 1200],
    ['two hundred thousand', 200_000],
    ['one one two', 112],
    ['nine two', 92],
    ['niner fower', 94],
    ['fife', 5],
    ['one two point five', 12.5],
    ['point five', 0.5],
    ['oh point five', 0.5],
    ['nought point five', 0.5],
    ['zero', 0],
    ['nought', 0],
    ['half', 0.5],
    ['a half', 0.5],
    ['half an', 0.5],
    ['three quarters of an', 0.75],
    ['two thirds', 2 / 3],
    ['three and a half', 3.5],
    ['3 and a half', 3.5],
    ['one and a quarter', 1.25],
    ['two and three quarters', 2.75],
    ['a couple', 2],
    ['a couple of', 2],
    ['a dozen', 12],
    ['two dozen', 24],
    ['half a dozen', 6],
  ])('"%s" is %d, and the longest reading takes every word', (text, value) => {
    const [longest] = readNumbers(split(text), 0);
    expect(longest).toMatchObject({ end: split(text).length, value, loose: false });
  });

  test('the kind tells how it was said', () => {
    const kind = (text: string) => readNumbers(split(text), 0)[0]?.kind;
    expect(kind('thirty seven')).toBe('whole');
    expect(kind('thirty seven point oh')).toBe('decimal');
    expect(kind('37.0')).toBe('decimal');
    expect(kind('three and a half')).toBe('fraction');
  });

  test('digits said one by one keep their leading zeros', () => {
    expect(readNumbers(split('zero six one five'), 0)[0]).toMatchObject({ value: 615, digits: '0615' });
    expect(readNumbers(['06'], 0)[0]).toMatchObject({ value: 6, digits: '06' });
    expect(readNumbers(['six'], 0)[0]).not.toHaveProperty('digits');
  });

  test('reading begins at the word asked for and counts from the first', () => {
    expect(readNumbers(split('pulse of ninety two regular'), 2)).toEqual([
      { end: 4, value: 92, kind: 'whole', loose: false },
    ]);
  });
});

describe('numbers said in a row are also given apart, longest first', () => {
  test.each([
    ['four four', [44, 4]],
    ['five six seven', [567, 56, 5]],
    ['one eighteen', [118, 1]],
    ['one twenty eighty', [120, 1]],
    ['a hundred and four', [104, 100]],
    ['one thousand two hundred', [1200, 1000]],
    ['three hundred and two hundred', [300]],
    ['one hundred one hundred', [100]],
    ['twenty five six', [25]],
    ['ninety 2', [90]],
  ])('"%s" can be %j', (text, expected) => {
    expect(values(text)).toEqual(expected);
  });
});

describe('words that bind are never cut short', () => {
  test.each([
    ['thirty two', [32]],
    ['ninety eight point six', [98.6]],
    ['three and a half', [3.5]],
    ['two hundred', [200]],
    ['two dozen', [24]],
    ['one hundred and three quarters', [100.75]],
  ])('"%s" is only %j', (text, expected) => {
    expect(values(text)).toEqual(expected);
  });
});

describe('what is no number is not joined into one', () => {
  test.each([
    ['twenty twenty', [20]],
    ['ninety ninety two', [90]],
    ['eleven twelve', [11]],
    ['forty twenty', [40]],
    ['ten five', [10]],
    ['four o clock', [4]],
    ['two point tenderness', [2]],
    ['six and half of his face', [6]],
    ['ninety and the', [90]],
  ])('"%s" is %j', (text, expected) => {
    expect(values(text)).toEqual(expected);
  });

  test.each([
    'oh',
    'oh dear',
    'o',
    'a',
    'an',
    'point',
    'point tenderness',
    'and a half',
    'fifth',
    'seconds',
    '14:32',
    'tree',
    'to',
    'for two',
    'and',
    'thirds',
    'constructor',
    '__proto__',
    '',
  ])('"%s" gives no reading', (text) => {
    expect(values(text)).toEqual([]);
  });

  test('an ordinal is no fraction: a rib, a degree of burn', () => {
    expect(values('a fifth rib')).toEqual([]);
    expect(values('one third degree burn')).toEqual([1]);
  });
});

describe('homophones count only where a number is expected, and are marked', () => {
  test.each([
    ['won', 1],
    ['to', 2],
    ['too', 2],
    ['for', 4],
    ['ate', 8],
    ['tree', 3],
    ['a', 1],
    ['an inch', 1],
    ['oh', 0],
    ['won eighteen', 118],
    ['ninety for', 94],
    ['nine too', 92],
    ['one won two', 112],
    ['to hundred', 200],
  ])('"%s" is loosely %d', (text, value) => {
    const [longest] = readNumbers(split(text), 0, { loose: true });
    expect(longest).toMatchObject({ value, loose: true });
    expect(readNumbers(split(text), 0).every((reading) => !reading.loose && reading.value !== value)).toBe(
      true,
    );
  });

  test('the plain reading is kept beside the loose one', () => {
    expect(readNumbers(split('ninety for'), 0, { loose: true })).toEqual([
      { end: 2, value: 94, kind: 'whole', loose: true },
      { end: 1, value: 90, kind: 'whole', loose: false },
    ]);
  });

  test.each([
    ['nine to ten', [9]],
    ['ninety for thirty seconds', [90]],
    ['ninety for the last minute', [90]],
    ['one to three', [1]],
    ['to ninety', []],
    ['to a hundred', []],
    ['for 30', []],
    ['a two inch cut', []],
    ['a 3', []],
  ])(
    '"%s" stays %j: "to" and "for" before a number or a determiner join, and an article counts nothing',
    (text, expected) => {
      expect(values(text, true)).toEqual(expected);
    },
  );

  test('a plain number is the same whether or not homophones count', () => {
    for (const text of [
      'one oh four',
      'ninety eight point six',
      'three and a half',
      'a couple of',
      'a dozen',
    ]) {
      expect(readNumbers(split(text), 0, { loose: true })).toEqual(readNumbers(split(text), 0));
    }
  });
});

describe('whatever is said', () => {
  const vocabulary = fc.constantFrom(
    ...split(
      `one two four nine zero oh o ten twelve twenty ninety hundred thousand and a an half quarter quarters point of
       couple dozen to for ate 5 12 06 98.6 1432 pulse`.replace(/\s+/g, ' '),
    ),
  );

  test('readings lie within the words, are finite, come longest first and differ', () => {
    fc.assert(
      fc.property(fc.array(vocabulary, { maxLength: 9 }), fc.nat(9), fc.boolean(), (words, start, loose) => {
        const readings = readNumbers(words, start, { loose });
        const ends = readings.map(({ end }) => end);
        expect(ends).toEqual(ends.toSorted((a, b) => b - a));
        expect(new Set(readings.map(({ end, value }) => `${end}:${value}`)).size).toBe(readings.length);
        for (const { end, value } of readings) {
          expect(end).toBeGreaterThan(start);
          expect(end).toBeLessThanOrEqual(words.length);
          expect(Number.isFinite(value)).toBe(true);
        }
        if (!loose) expect(readings.some((reading) => reading.loose)).toBe(false);
      }),
      { numRuns: 3000, seed: 20260503 },
    );
  });

  test('no text makes it throw', () => {
    fc.assert(
      fc.property(fc.array(fc.string()), (words) => Array.isArray(readNumbers(words, 0, { loose: true }))),
      { seed: 20260503 },
    );
  });

  test('a very long row of digits gives a bounded number of readings', () => {
    expect(readNumbers(Array<string>(5000).fill('one'), 0).length).toBeLessThanOrEqual(12);
  });
});

describe('two digits are read whatever follows them', () => {
  test.each([
    ['oh six hundred', 2, 6, '06'],
    ['zero five', 2, 5, '05'],
    ['06 hundred', 1, 6, '06'],
  ])('"%s"', (text, end, value, digits) => {
    expect(readTwoDigits(split(text), 0)).toContainEqual({ end, value, kind: 'whole', loose: false, digits });
  });

  test('"fourteen hundred" begins with fourteen, and "hundred" with nothing', () => {
    expect(readTwoDigits(split('fourteen hundred'), 0)[0]).toMatchObject({ end: 1, value: 14 });
    expect(readTwoDigits(['hundred'], 0)).toEqual([]);
  });
});
