// Numbers said as English says them, up to hundreds of thousands, with "and" or without, and the short "one eighteen".

import type { Piece } from './reading.ts';
import { isArticle, numeralAt } from './words.ts';

const FIGURES = /^\d+$/;

/** Numbers from 0 to 99 said as one: "nine", "twelve", "thirty two", "32". A plain "thirty two" is never thirty. */
export function belowHundred(words: readonly string[], start: number, loose: boolean): readonly Piece[] {
  const first = numeralAt(words, start, loose);
  if (first === null) return [];
  const asFigures = FIGURES.test(words[start] ?? '') ? { digits: words[start] ?? '' } : {};
  const alone: Piece = { end: start + 1, value: first.value, loose: first.loose, ...asFigures };
  const unit = first.size === 'tens' ? numeralAt(words, start + 1, loose) : null;
  // A figure after a word is a number of its own: "ninety 2 litres".
  const joins = unit?.size === 'digit' && unit.value > 0 && !FIGURES.test(words[start + 1] ?? '');
  if (unit === null || !joins) return [alone];
  const joined: Piece = { end: start + 2, value: first.value + unit.value, loose: unit.loose };
  return unit.loose ? [joined, alone] : [joined];
}

/** A base and, where one follows (with or without "and"), the base with that smaller number added. */
function withTail(
  words: readonly string[],
  base: Piece,
  tails: (at: number) => readonly Piece[],
): readonly Piece[] {
  const at = words[base.end] === 'and' ? base.end + 1 : base.end;
  const added = tails(at)
    .filter((tail) => tail.value > 0)
    .map((tail) => ({ end: tail.end, value: base.value + tail.value, loose: base.loose || tail.loose }));
  return [base, ...added];
}

/** The numbers that can stand before "hundred" or "thousand": none said (one), "a", or a number. */
function heads(words: readonly string[], start: number, scale: string, loose: boolean): readonly Piece[] {
  if (words[start] === scale) return [{ end: start, value: 1, loose: false }];
  if (isArticle(words[start])) return [{ end: start + 1, value: 1, loose: false }];
  return belowHundred(words, start, loose).filter((head) => head.value > 0);
}

const scaled = (
  words: readonly string[],
  from: readonly Piece[],
  scale: string,
  by: number,
): readonly Piece[] =>
  from
    .filter((head) => words[head.end] === scale)
    .map((head) => ({ end: head.end + 1, value: head.value * by, loose: head.loose }));

/** True where a word stands among the `within` words from `start` on. */
function stands(words: readonly string[], word: string, start: number, within: number): boolean {
  for (let at = start; at < start + within; at++) if (words[at] === word) return true;
  return false;
}

// "ninety nine hundred", "nine hundred and ninety nine thousand": further off no scale belongs to what begins here.
const TO_HUNDRED = 3;
const TO_THOUSAND = 6;

function hundreds(words: readonly string[], start: number, loose: boolean): readonly Piece[] {
  if (!stands(words, 'hundred', start, TO_HUNDRED)) return [];
  return scaled(words, heads(words, start, 'hundred', loose), 'hundred', 100).flatMap((base) =>
    withTail(words, base, (at) => belowHundred(words, at, loose)),
  );
}

function belowThousand(words: readonly string[], start: number, loose: boolean): readonly Piece[] {
  const word = words[start] ?? '';
  if (/^[1-9]\d\d$/.test(word)) return [{ end: start + 1, value: Number(word), loose: false, digits: word }];
  return [...belowHundred(words, start, loose), ...hundreds(words, start, loose)].filter(
    (it) => it.value < 1000,
  );
}

function thousands(words: readonly string[], start: number, loose: boolean): readonly Piece[] {
  if (!stands(words, 'thousand', start, TO_THOUSAND)) return [];
  const before = [...heads(words, start, 'thousand', loose), ...belowThousand(words, start, loose)];
  return scaled(words, before, 'thousand', 1000).flatMap((base) =>
    withTail(words, base, (at) => belowThousand(words, at, loose)),
  );
}

/** "one eighteen" for 118, "two twenty" for 220: a digit, then ten or more. */
function shortHundreds(words: readonly string[], start: number, loose: boolean): readonly Piece[] {
  const first = numeralAt(words, start, loose);
  if (first?.size !== 'digit' || first.value === 0) return [];
  return belowHundred(words, start + 1, loose)
    .filter((rest) => rest.value >= 10)
    .map((rest) => ({
      end: rest.end,
      value: first.value * 100 + rest.value,
      loose: first.loose || rest.loose,
    }));
}

/** Every whole number said in words that begins at `start`, in no order. */
export const cardinals = (words: readonly string[], start: number, loose: boolean): readonly Piece[] => [
  ...belowHundred(words, start, loose),
  ...hundreds(words, start, loose),
  ...thousands(words, start, loose),
  ...shortHundreds(words, start, loose),
];
