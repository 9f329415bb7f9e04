// Numbers said digit by digit, as on the radio: "one one two", "oh six", "one oh four"; every shorter run is given too.

import type { Piece } from './reading.ts';
import { isOh, isPoint, numeralAt } from './words.ts';

/** Longer runs are telephone numbers, not measurements; the limit also keeps a value exact. */
const LONGEST_RUN = 12;

interface Digit {
  readonly value: number;
  readonly loose: boolean;
}

function digitAt(words: readonly string[], at: number, loose: boolean): Digit | null {
  if (isOh(words[at])) return { value: 0, loose: false };
  const numeral = numeralAt(words, at, loose);
  return numeral?.size === 'digit' ? numeral : null;
}

/** True for a word that is one digit, "oh" among them. */
export const isDigit = (words: readonly string[], at: number): boolean => digitAt(words, at, false) !== null;

// "four o clock" is no forty and "oh" alone no zero: it needs a digit, a point or another "oh" beside it.
function ohStands(words: readonly string[], at: number, loose: boolean): boolean {
  if (isPoint(words[at + 1]) || isOh(words[at - 1])) return true;
  return digitAt(words, at + 1, loose) !== null;
}

/** The runs of two digits and more that begin at `start`, and the single "oh" before a point; shortest first. */
export function digitRuns(
  words: readonly string[],
  start: number,
  loose: boolean,
  longest = LONGEST_RUN,
): readonly Piece[] {
  const runs: Piece[] = [];
  let digits = '';
  let anyLoose = false;
  let onlyOh = true;
  for (let at = start; at < start + longest; at++) {
    const digit = digitAt(words, at, loose);
    if (digit === null) break;
    const oh = isOh(words[at]);
    if (oh && !ohStands(words, at, loose) && !(loose && at === start)) break;
    digits += digit.value;
    anyLoose ||= digit.loose;
    onlyOh &&= oh;
    const before = isPoint(words[at + 1]);
    if (onlyOh ? before || loose : digits.length > 1) {
      runs.push({ end: at + 1, value: Number(digits), loose: anyLoose || (onlyOh && !before), digits });
    }
  }
  return runs;
}

/** Digits after a point, one by one; here "oh" needs no neighbour ("thirty eight point oh"). Shortest first. */
export function decimalDigits(words: readonly string[], start: number, loose: boolean): readonly Piece[] {
  const runs: Piece[] = [];
  let digits = '';
  let anyLoose = false;
  for (let at = start; at < start + LONGEST_RUN; at++) {
    const digit = digitAt(words, at, loose);
    if (digit === null) break;
    digits += digit.value;
    anyLoose ||= digit.loose;
    runs.push({ end: at + 1, value: Number(digits), loose: anyLoose, digits });
  }
  return runs;
}
