// Checks spoken times against an independent date reader and against the Recognizers-Text specifications.
//
// Sources beside the checks:
// - "chrono": npm chrono-node 2 (MIT), seen.
// - "Recognizers-Text": Specs/DateTime/English TimeParser and DurationParser, github microsoft/Recognizers-Text 90e968ea
//   (MIT), seen.

import * as chrono from 'chrono-node';
import { describe, expect, test } from 'vitest';
import { formatIso, readTimes, resolveTime, type SpokenTime } from '../../src/parse/times/index.ts';
import { CASES_PLACE, casesOf, countLines, type LeftOut, sifted, wordsOf } from './recognizer-cases.ts';

function read(text: string): SpokenTime | null {
  const words = wordsOf(text);
  const [longest] = readTimes(words, 0);
  return longest?.end === words.length ? longest.time : null;
}

const MINUTE = 60_000;
const OFFSET = -6 * 60;
const ZONE = '-06:00';
// half past eleven at night, so that most clock times lie before it on the same day
const heardAt = Date.UTC(2026, 4, 4, 5, 30);

const two = (value: number): string => String(value).padStart(2, '0');
const hours12 = [...Array(12).keys()].map((hour) => hour + 1);

/** Every form that we say we read, over the range of its numbers. */
const FORMS: Readonly<Record<string, readonly string[]>> = {
  'figures with a colon': [...Array(24).keys()].flatMap((hour) =>
    [0, 5, 14, 32, 59].map((minute) => `${two(hour)}:${two(minute)}`),
  ),
  'figures with a colon, am and pm': hours12.flatMap((hour) =>
    [0, 15, 47].flatMap((minute) => [`${hour}:${two(minute)} am`, `${hour}:${two(minute)} pm`]),
  ),
  'a bare hour, am and pm': hours12.flatMap((hour) => [`${hour} am`, `${hour} pm`]),
  "o'clock": hours12.map((hour) => `${hour} o'clock`),
  'a part of the day': [
    '9 in the morning',
    '3 in the afternoon',
    '7 in the evening',
    '9 at night',
    '2 at night',
  ],
  'named hours': ['noon', 'midday', 'midnight'],
  'minutes ago': [
    'a minute ago',
    'ten minutes ago',
    '25 minutes ago',
    'a couple of minutes ago',
    '2 min ago',
  ],
  'seconds ago': ['thirty seconds ago', '45 seconds ago'],
  'hours ago': ['an hour ago', 'two hours ago', 'half an hour ago', 'about an hour ago', '2.5 hours ago'],
  'hours and minutes ago': [
    'an hour and ten minutes ago',
    '1 hour 20 minutes ago',
    'two and a half hours ago',
  ],
  'a unit and a half ago': ['an hour and a half ago'],
  'minutes past or to': ['quarter past two', 'half past two', 'ten to three', '20 past 3', 'twenty to nine'],
  'four figures': ['1432', '0615', '1432 hours'],
  'clock in words': ['fourteen thirty two', 'oh six fifteen', 'two fifteen pm', 'fourteen hundred hours'],
  now: ['just now', 'right now'],
};

/** chrono's result, where it covers the phrase from its first letter to its last; null is "not understood". */
function chronoOf(text: string): chrono.ParsedResult | null {
  const results = chrono.parse(text, { instant: new Date(heardAt), timezone: OFFSET });
  const [first] = results;
  return results.length === 1 && first?.text.length === text.length ? first : null;
}

const clockOf = (epochMs: number): string => formatIso(epochMs, ZONE).slice(11, 16);

function agrees(text: string, theirs: chrono.ParsedResult): void {
  const time = read(text);
  expect(time, text).not.toBeNull();
  if (time === null) return;
  const at = resolveTime(time, heardAt, ZONE);
  if (time.kind !== 'clock') {
    expect(at, text).toBe(theirs.date().getTime());
    return;
  }
  // Which day is meant is our own rule (the latest, or one within the hour where that is a day ago), and so is the half of the day where none is said.
  const [hour, minute] = [theirs.start.get('hour') ?? -1, theirs.start.get('minute') ?? -1];
  const halfKnown = time.twentyFour || time.half !== undefined;
  const [ours = -1, ourMinute = -1] = clockOf(at).split(':').map(Number);
  expect(halfKnown ? ours : ours % 12, text).toBe(halfKnown ? hour : hour % 12);
  expect(ourMinute, text).toBe(minute);
  expect(at, text).toBeLessThanOrEqual(heardAt + 60 * MINUTE);
  expect(at, text).toBeGreaterThan(heardAt - 24 * 60 * MINUTE);
}

describe('chrono: the same time, wherever it understands the whole phrase', () => {
  const phrases = Object.entries(FORMS).flatMap(([form, texts]) => texts.map((text) => ({ form, text })));
  const understood = phrases.filter(({ text }) => chronoOf(text) !== null);

  test('what it understands is counted, and what it does not is listed by form', () => {
    const missed = Object.keys(FORMS).map((form) => {
      const texts = phrases.filter((phrase) => phrase.form === form && chronoOf(phrase.text) === null);
      return texts.length === 0 ? null : `  ${form}: ${texts.map(({ text }) => `"${text}"`).join(', ')}`;
    });
    console.info(
      [
        `chrono-node: ${understood.length} of ${phrases.length} phrases compared; not understood`,
        '(no result, or one that does not cover the phrase):',
        ...missed.filter((line) => line !== null),
      ].join('\n'),
    );
    expect(understood.length).toBeGreaterThan(0);
  });

  test('every form is read here, whether chrono understands it or not', () => {
    for (const { text } of phrases) expect(read(text), text).not.toBeNull();
  });

  for (const form of Object.keys(FORMS)) {
    const texts = understood.filter((phrase) => phrase.form === form);
    if (texts.length === 0) continue;
    test(`${form}: ${texts.length} phrases`, () => {
      for (const { text } of texts) {
        const theirs = chronoOf(text);
        if (theirs !== null) agrees(text, theirs);
      }
    });
  }
});

const said =
  (matches: RegExp): LeftOut['fits'] =>
  (one) =>
    one.Results.some(({ Text }) => matches.test(Text.toLowerCase()));

const NOT_SPOKEN: readonly LeftOut[] = [
  {
    rule: 'a bare hour',
    why: 'a number with nothing to make it a time is no time here',
    fits: said(/^(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$/),
  },
  {
    rule: 'a vague part of the day, or one said before the hour, or midnight with another hour',
    why: 'no time ("mid-morning"), or words that the grammar reads before the time',
    fits: said(/mid[- ]?(morning|afternoon)|lunchtime|noonish|^(in the|afternoon)\b|o'clock midnight/),
  },
  {
    rule: 'seconds of the clock',
    why: 'the record of a spoken time has no seconds',
    fits: said(/\d:\d\d:\d\d/),
  },
  {
    rule: '"-ish", "7ampm", "7h01", "10 H 10", "8.10 pm"',
    why: 'not said, or not in English',
    fits: said(/ish\b|ampm|\dh|\d h |\d\.\d/),
  },
  {
    rule: 'three quarters past, or a time before another time with minutes',
    why: 'not said of a patient',
    fits: said(/three quarters|to \w+ thirty/),
  },
  {
    rule: 'a single digit for the minutes',
    why: '"eleven five" is two numbers; "eleven oh five" is a time',
    fits: said(/^\w+ (one|two|three|four|five|six|seven|eight|nine)$/),
  },
  {
    rule: 'a part of the day without "in the" or "this"',
    why: 'not said',
    fits: said(/\w (afternoon|morning|evening|night)$(?<!(the|this|at) \w+)/),
  },
];

/** "T14:30" of a spoken time that is a clock time, by the hour as the specification takes it (morning where not said). */
function timexOf(time: SpokenTime | null): string | null {
  if (time?.kind !== 'clock') return null;
  const hour = time.half === undefined ? time.hour : (time.hour % 12) + (time.half === 'pm' ? 12 : 0);
  return `T${two(hour)}:${two(time.minute)}`;
}

describe('Recognizers-Text: clock times', () => {
  const cases = casesOf('TimeParser');
  test(cases === null ? `needs ${CASES_PLACE}` : 'TimeParser: the same hour and minute', () => {
    if (cases === null) return;
    const sieve = sifted(cases, NOT_SPOKEN);
    console.info(countLines('TimeParser', cases, sieve));
    for (const one of sieve.kept) {
      for (const { Text, Value } of one.Results) {
        const timex = Value?.Timex ?? '';
        expect(timexOf(read(Text)), Text).toBe(timex.includes(':') ? timex : `${timex}:00`);
      }
    }
    expect(sieve.kept.length).toBeGreaterThan(0);
  });
});

const NOT_AGO: readonly LeftOut[] = [
  {
    rule: 'months, years, decades, fortnights, working days',
    why: 'longer ago than an examination asks the time of',
    fits: said(/month|year|decade|fortnight|business/),
  },
  {
    rule: '"all day", "whole day", "another hour" and the like',
    why: 'how long, and not how long ago',
    fits: said(/\b(all|full|whole|another)\b/),
  },
  {
    rule: 'a single letter for the unit',
    why: 'written and not said',
    fits: said(/\d\s*h$/),
  },
  {
    rule: '"twenty and four hours"',
    why: 'not said; the two readings apart are safer',
    fits: said(/twenty and four/),
  },
];

/** Seconds of an ISO 8601 duration of weeks, days, hours, minutes and seconds. */
function secondsOf(timex: string): number {
  const [, week = 0, day = 0, hour = 0, minute = 0, second = 0] =
    /^P(?:([\d.]+)W)?(?:([\d.]+)D)?(?:T(?:([\d.]+)H)?(?:([\d.]+)M)?(?:([\d.]+)S)?)?$/.exec(timex) ?? [];
  const days = Number(week) * 7 + Number(day);
  return ((days * 24 + Number(hour)) * 60 + Number(minute)) * 60 + Number(second);
}

describe('Recognizers-Text: spans of time, with "ago" put after them', () => {
  const cases = casesOf('DurationParser');
  test(cases === null ? `needs ${CASES_PLACE}` : 'DurationParser: the same seconds', () => {
    if (cases === null) return;
    const sieve = sifted(cases, NOT_AGO);
    console.info(countLines('DurationParser', cases, sieve));
    for (const one of sieve.kept) {
      for (const { Text, Value } of one.Results) {
        const time = read(`${Text} ago`);
        const seconds = time?.kind === 'ago' ? time.seconds : null;
        expect(seconds, Text).toBe(Math.round(secondsOf(Value?.Timex ?? '')));
      }
    }
    expect(sieve.kept.length).toBeGreaterThan(0);
  });
});
