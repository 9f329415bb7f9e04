// A blood glucose in mg/dL, mmol/L converted.

import { type Island, numberOf, tagOf } from '../../islands/island.ts';
import { inRecordUnit } from '../../units.ts';
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
