// Decimals said with "point" (or the radio's "decimal"): "ninety eight point six", "oh point five", "point two five".

import { belowHundred } from './cardinal.ts';
import { decimalDigits } from './digits.ts';
import type { NumberReading, Piece } from './reading.ts';
import { isPoint } from './words.ts';

function tails(words: readonly string[], at: number, loose: boolean): readonly Piece[] {
  const word = words[at] ?? '';
  if (/^\d{2,12}$/.test(word)) return [{ end: at + 1, value: Number(word), loose: false, digits: word }];
  // "two hundred point seventy one" is 200.71
  const asNumber = belowHundred(words, at, loose).filter((piece) => piece.value >= 10);
  return [...decimalDigits(words, at, loose), ...asNumber];
}

/** The decimals that go on from a whole number at its end; empty where no point and digit follow. */
export function decimals(words: readonly string[], whole: Piece, loose: boolean): readonly NumberReading[] {
  if (!isPoint(words[whole.end])) return [];
  return tails(words, whole.end + 1, loose).map((tail) => ({
    end: tail.end,
    value: Number(`${whole.value}.${tail.digits ?? tail.value}`),
    kind: 'decimal',
    loose: whole.loose || tail.loose,
  }));
}
