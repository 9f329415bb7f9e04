// Checks spoken numbers against the Unicode CLDR's spelling rules and the Recognizers-Text specifications.
//
// Sources beside the checks:
// - "CLDR": English rule-based number format, Unicode CLDR 48, npm cldr-rbnf (Unicode-3.0 licence), seen.
// - "Recognizers-Text": Specs/Number, NumberWithUnit (English), github microsoft/Recognizers-Text 90e968ea (MIT), seen.

import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { readNumbers } from '../../src/parse/numbers/index.ts';
import {
  CASES_PLACE,
  casesOf,
  countLines,
  type LeftOut,
  type RecognizerCase,
  sifted,
  wordsOf,
} from './recognizer-cases.ts';
import { type RuleSets, spellDecimal, spellWhole } from './spell-out.ts';

const english = createRequire(import.meta.url)('cldr-rbnf/rbnf/en.json') as {
  readonly rbnf: { readonly rbnf: { readonly SpelloutRules: RuleSets } };
};
const rules = english.rbnf.rbnf.SpelloutRules;

/** What the words are read as when every one of them is taken, or null. */
function wholeReading(spelled: string): number | null {
  const words = wordsOf(spelled);
  const [longest] = readNumbers(words, 0);
  return longest?.end === words.length && !longest.loose ? longest.value : null;
}

describe('CLDR: a number spelled by the English rules is read back exactly, as the longest reading', () => {
  const sets = [
    ['without "and"', '%spellout-cardinal'],
    ['with "and"', '%spellout-cardinal-verbose'],
  ] as const;

  test('the rules spell as English does', () => {
    expect(spellWhole(rules, '%spellout-cardinal', 342)).toBe('three hundred forty-two');
    expect(spellWhole(rules, '%spellout-cardinal-verbose', 1004)).toBe('one thousand and four');
    expect(spellDecimal(rules, '%spellout-cardinal', 98, '6')).toBe('ninety-eight point six');
  });

  test.each(sets)('every whole number from 0 to 9999 %s', (_, set) => {
    for (let value = 0; value <= 9999; value++) {
      const spelled = spellWhole(rules, set, value);
      expect(wholeReading(spelled), spelled).toBe(value);
    }
  });

  test.each(sets)('every tenth from 30.0 to 43.0 and from 90.0 to 110.0 %s', (_, set) => {
    const tenths = [...Array(131).keys()]
      .map((i) => 300 + i)
      .concat([...Array(201).keys()].map((i) => 900 + i));
    for (const tenth of tenths) {
      const spelled = spellDecimal(rules, set, Math.floor(tenth / 10), String(tenth % 10));
      expect(wholeReading(spelled), spelled).toBe(tenth / 10);
    }
  });
});

const ORDINAL =
  /\b(third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|hundredth|thousandth|millionth|trillionth|thirtieth|first)s?\b/;
const DIGIT = '(nought|naught|zero|one|two|three|four|five|six|seven|eight|nine)';
const NUMBER_WORD = /\b(one|two|three|four|five|six|seven|eight|nine|ten|half)\b/;

const input = (matches: RegExp) => (one: RecognizerCase) => matches.test(one.Input.toLowerCase());

/** Left out of the number cases: each rule looks at the case's own text and expectation. */
const NOT_TALK: readonly LeftOut[] = [
  {
    rule: 'a sign before the number',
    why: 'nothing that is measured on a patient is below zero',
    fits: input(/\b(minus|negative)\b|(^|\s)-\s*\d/),
  },
  {
    rule: "a million or more, or a magnitude as a letter (k, M, G) or another culture's word (lakh, crore)",
    why: "no such number in a responder's talk",
    fits: (one) =>
      input(/million|billion|trillion|lakh|crore|\d\s*(k|m|mm|mil|g|b|bln|tln)\b/)(one) ||
      one.Results.some(({ Resolution }) => Number(Resolution?.value) >= 1_000_000),
  },
  {
    rule: 'written notation: powers, fraction signs, a slash, figures in spaced groups, decimal commas, dotted addresses',
    why: 'written and not said; the words that reach the reader have none of it',
    fits: input(
      /\^|\de[+-]?\d|[½⅓¼¾⅔⅙]|\d\s*\/\s*\d|\d[\s\u202f]\d{3,}|\d,(?!\d{3}(\D|$))\d|\d\.\d+[.,]\d|\d,\d{3}\.\d/,
    ),
  },
  {
    rule: 'figures joined to more figures by commas without a space',
    why: 'a list or a group of thousands, undecidable; written and not said',
    fits: input(/\d,\d+,\d/),
  },
  {
    rule: 'a fraction by an ordinal, other than "two thirds"',
    why: 'an ordinal names a rib, a finger or a degree of burn',
    fits: (one) =>
      one.Results.some(({ Text }) => ORDINAL.test(Text.replace(/^two thirds$/, '').toLowerCase())),
  },
  {
    rule: '"over", "out of" or "in" as a fraction bar',
    why: '"over" stands between the two numbers of a blood pressure, "out of" and "in" between a score and its scale',
    fits: (one) => one.Results.some(({ Text }) => /\b(over|out of|in)\b/.test(Text)),
  },
  {
    rule: 'a figure that touches a letter and is expected not to be a number',
    why: 'the words that reach the reader have the unit apart ("3 cm")',
    fits: (one) => one.Results.length === 0 && input(/\d[a-z]/)(one),
  },
  {
    rule: 'a number word that is expected not to be a number ("this one", "an ordinal")',
    why: 'whether a number is meant is for the grammar; the reader is asked only where one can stand',
    fits: (one) => one.Results.length === 0 && input(NUMBER_WORD)(one),
  },
  {
    rule: 'single digits in a row expected apart',
    why: 'on the radio they are one number; the readings apart are also given',
    fits: input(new RegExp(`(?<!point (?:\\w+ )*)\\b${DIGIT}[- ]+${DIGIT}\\b`)),
  },
  {
    rule: 'dozens abbreviated, or added to hundreds',
    why: 'not said',
    fits: input(/\bdo?zs\b|hundred and \w+ dozens/),
  },
  {
    rule: 'a decimal or three figures before "hundred"',
    why: 'not said',
    fits: input(/(\d\.\d+|\d{3}) hundred/),
  },
];

/** The numbers of a sentence, taking the longest reading wherever one begins. */
function scanned(words: readonly string[]): readonly number[] {
  const found: number[] = [];
  for (let at = 0; at < words.length; ) {
    const [longest] = readNumbers(words, at);
    if (longest !== undefined) found.push(longest.value);
    at = longest?.end ?? at + 1;
  }
  return found;
}

describe('Recognizers-Text: the numbers of a sentence', () => {
  const cases = casesOf('NumberModel');
  test(cases === null ? `needs ${CASES_PLACE}` : 'NumberModel: the same numbers, in the same order', () => {
    if (cases === null) return;
    const sieve = sifted(cases, NOT_TALK);
    console.info(countLines('NumberModel', cases, sieve));
    for (const one of sieve.kept) {
      const expected = one.Results.map(({ Resolution }) => Number(Resolution?.value));
      const read = scanned(wordsOf(one.Input));
      expect(read.length, one.Input).toBe(expected.length);
      for (const [i, value] of read.entries())
        expect(value, one.Input).toBeCloseTo(expected[i] ?? Number.NaN, 9);
    }
    expect(sieve.kept.length).toBeGreaterThan(0);
  });
});

/** The units in which size, weight, temperature and age are said. Anything else is left out. */
const UNITS = new Set(
  `Centimeter Millimeter Meter Inch Foot Gram Kilogram Ounce Pound Stone Milligram Microgram Milliliter Liter
   C F Degree Year Month Week Day`.split(/\s+/),
);

const amountsOf = (one: RecognizerCase) =>
  one.Results.filter(
    ({ Resolution }) => UNITS.has(Resolution?.unit ?? '') && typeof Resolution?.value === 'string',
  );

const NO_AMOUNT: readonly LeftOut[] = [
  {
    rule: 'no amount in a unit that size, weight, temperature or age is said in',
    why: 'nothing to compare; miles, acres and degrees of turn are not measured on a patient',
    fits: (one) => amountsOf(one).length === 0,
  },
  {
    rule: 'a sign before the number',
    why: 'nothing that is measured on a patient is below zero',
    fits: (one) => amountsOf(one).some(({ Resolution }) => Number(Resolution?.value) < 0),
  },
  {
    rule: 'one amount in two units ("5 feet 2 inches"), expected as one number',
    why: 'two numbers; units.ts sums them, and tests/parse/units.test.ts holds that',
    fits: (one) =>
      amountsOf(one).some(({ Text }) => (Text.match(/\d+/g)?.length ?? 0) > 1 && !/[.,]/.test(Text)),
  },
  {
    rule: 'a magnitude of another culture (lakh)',
    why: 'not said',
    fits: (one) => /lakh|crore/.test(one.Input),
  },
];

/** The first number at or after the place where the specification found an amount, its words included. */
function readInPlace(one: RecognizerCase, start: number, text: string): number | undefined {
  const before = wordsOf(one.Input.slice(0, start)).length;
  const words = wordsOf(one.Input);
  for (let at = before; at < before + wordsOf(text).length; at++) {
    const [longest] = readNumbers(words, at);
    if (longest !== undefined) return longest.value;
  }
  return undefined;
}

describe('Recognizers-Text: the number of an amount, where it stands in its sentence', () => {
  for (const model of ['DimensionModel', 'TemperatureModel', 'AgeModel']) {
    const cases = casesOf(model);
    test(cases === null ? `${model} needs ${CASES_PLACE}` : `${model}: the same value`, () => {
      if (cases === null) return;
      const sieve = sifted(cases, NO_AMOUNT);
      console.info(countLines(model, cases, sieve));
      for (const one of sieve.kept) {
        for (const { Text, Start, Resolution } of amountsOf(one)) {
          expect(readInPlace(one, Start, Text), one.Input).toBe(Number(Resolution?.value));
        }
      }
      expect(sieve.kept.length).toBeGreaterThan(0);
    });
  }
});
