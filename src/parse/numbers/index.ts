// Promises every number that can be read from a given word on, and never joins numbers that were said apart.

import { belowHundred, cardinals } from './cardinal.ts';
import { decimals } from './decimal.ts';
import { digitRuns } from './digits.ts';
import { figures } from './figures.ts';
import { counts, fractions, mixed } from './fraction.ts';
import { asWhole, type NumberReading, type Piece, type ReadOptions } from './reading.ts';
import { isArticle, isDenominator, isDozen, isScale, mayBegin, numeralAt, standsAlone } from './words.ts';

export { isDigit } from './digits.ts';
export type { NumberReading, ReadOptions } from './reading.ts';
export { isFigure, mayBegin, mayBeLoose, pastNumberWords, standsAlone } from './words.ts';

/** What a whole number becomes with the words after it; these bind, so that "ninety eight point six" is never 98. */
function completed(words: readonly string[], whole: Piece, loose: boolean): readonly NumberReading[] {
  const decimal = decimals(words, whole, loose);
  if (decimal.length > 0) return decimal;
  const withFraction = mixed(words, whole);
  if (withFraction !== null) return [withFraction];
  if (isDozen(words[whole.end]) && whole.value > 0 && whole.value < 100) {
    return [{ end: whole.end + 1, value: whole.value * 12, kind: 'whole', loose: whole.loose }];
  }
  return isScale(words[whole.end]) || isDenominator(words[whole.end]) ? [] : [asWhole(whole)];
}

function inOrder(readings: readonly NumberReading[]): readonly NumberReading[] {
  if (readings.length < 2) return readings;
  const sorted = [...readings].sort((a, b) => b.end - a.end || Number(a.loose) - Number(b.loose));
  const isSame = (a: NumberReading, b: NumberReading): boolean => a.end === b.end && a.value === b.value;
  return sorted.filter((one, i) => sorted.findIndex((other) => isSame(one, other)) === i);
}

/**
 * Every reading that begins at `start`, longest first; empty where none does. Never throws.
 *
 * Shorter readings are given where saying numbers in a row sounds the same ("four four" is 44 or 4, "one eighteen" 118
 * or 1, "a hundred and four" 104 or 100); they are for a grammar that asks for several numbers. A caller must not fall
 * back on a shorter one because the longer is out of range: "pulse twelve hundred" is no pulse of twelve.
 * "a" and "an" alone are 1, and homophones are digits, only with `options.loose`; such readings are marked `loose`.
 */
export function readNumbers(
  words: readonly string[],
  start: number,
  options: ReadOptions = {},
): readonly NumberReading[] {
  const loose = options.loose ?? false;
  if (!mayBegin(words[start], loose)) return [];
  if (standsAlone(words, start)) return alone(words, start);
  const figure = figures(words, start);
  const wholes: readonly Piece[] = [
    ...(figure?.kind === 'whole' ? [figure] : []),
    ...cardinals(words, start, loose),
    ...digitRuns(words, start, loose),
    // "point five": nothing stands before the point
    ...(words[start] === 'point' ? [{ end: start, value: 0, loose: false }] : []),
  ];
  const fraction = fractions(words, start);
  const counted = counts(words, start);
  const bound = fraction.length > 0 || counted.length > 0;
  // "a two inch cut": the article belongs to the number after it
  const aloneIsOne = loose && isArticle(words[start]) && !bound && readNumbers(words, start + 1).length === 0;
  const one = aloneIsOne ? [{ end: start + 1, value: 1, loose: true }] : [];
  const readings = [...wholes, ...one].flatMap((whole) => completed(words, whole, loose));
  return inOrder([
    ...readings.filter((reading) => reading.end > start && !(bound && reading.end === start + 1)),
    ...(figure?.kind === 'decimal' ? [figure] : []),
    ...fraction,
    ...counted,
  ]);
}

/** A number of one word, of which nothing more can be said: most are. */
function alone(words: readonly string[], start: number): readonly NumberReading[] {
  const figure = figures(words, start);
  const numeral = numeralAt(words, start, false);
  if (figure !== null) return [figure];
  return numeral === null ? [] : [{ end: start + 1, value: numeral.value, kind: 'whole', loose: false }];
}

/**
 * Whole numbers of one or two digits that begin at `start` ("thirty two", "oh six", "06"), longest first. What follows
 * does not matter here: "oh six hundred" begins with one.
 */
export function readTwoDigits(words: readonly string[], start: number): readonly NumberReading[] {
  if (!mayBegin(words[start], false)) return [];
  const padded = figures(words, start);
  return inOrder([
    ...belowHundred(words, start, false).map(asWhole),
    ...digitRuns(words, start, false, 2)
      .filter((run) => run.digits?.length === 2)
      .map(asWhole),
    ...(padded?.digits?.length === 2 ? [padded] : []),
  ]);
}
