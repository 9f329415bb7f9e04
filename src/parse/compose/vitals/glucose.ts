// A blood glucose in mg/dL, mmol/L converted.

import { type Island, numberOf, tagOf } from '../../islands/island.ts';
import { isDigit } from '../../numbers/index.ts';
import type { Token } from '../../token.ts';
import { inRecordUnit, roundTo } from '../../units.ts';
import { BOUNDS, isWithin, type Read } from './vital-read.ts';

// Meters show mmol/L up to about 33 and mg/dL from about 20: below 30 without a unit it is taken for mmol/L, and marked so.
const MMOL_BELOW = 30;

/** The glucose of an island. */
export function glucoseOf(island: Island): Read {
  const value = numberOf(island, 'glucose');
  if (value === null) return null;
  const said = tagOf(island, 'unit');
  const isMmol = said === 'mmol' || (said === null && value < MMOL_BELOW);
  const converted = inRecordUnit({ value, unit: isMmol ? 'mmolPerL' : 'mgPerDl' });
  if (converted === null || !isWithin(converted.value, BOUNDS.mgPerDl)) return null;
  return {
    reading: { vital: 'glucose', value: { mgPerDl: converted.value } },
    known: said === null && isMmol ? { unit: 'inferred' } : {},
  };
}

/** Readings that a meter of either unit may show: in mg/dL from about 20, in mmol/L up to 33.3 (common practice, no source). */
const EITHER = { from: 20, to: 33.3 };

/**
 * Why a glucose is asked about, or null: without a unit "twenty four" is dangerously low in mg/dL and dangerously high in mmol/L;
 * and "BM seven two", digit by digit, is 72 mg/dL to one and 7.2 mmol/L to another (common practice, no source).
 */
export function glucoseDoubt(island: Island, tokens: readonly Token[]): string | null {
  const [number] = island.slots;
  if (number === undefined || tagOf(island, 'unit') !== null || number.value === null) return null;
  if (number.value >= EITHER.from && number.value <= EITHER.to)
    return `Is it ${number.value} mg/dL, or ${number.value} mmol/L?`;
  const words = tokens.slice(number.from, number.to).map(({ word }) => word);
  const isPair = words.length === 2 && words.every((_, at) => isDigit(words, at));
  return isPair ? `Is it ${number.value} mg/dL, or ${roundTo(number.value / 10, 1)} mmol/L?` : null;
}
