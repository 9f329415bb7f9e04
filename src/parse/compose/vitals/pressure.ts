// A blood pressure in mmHg, with its lower figure or by palpation.

import { hasTag, type Island, numberOf } from '../../islands/island.ts';
import { BOUNDS, isWholeWithin, type Read } from './vital-read.ts';

// Two figures with "over" and no name are taken for a pressure only where they look like one (common practice, no source).
const LEAST_UNNAMED = { systolic: 50, diastolic: 20 };

// Two numbers in a row are a pressure only where nothing else is likely (common practice, no source).
const LEAST_SPLIT = 30;
const LEAST_BETWEEN = 15;

/** The pressure of an island; null where the systolic is not above its diastolic. */
export function pressureOf(island: Island): Read {
  const systolic = numberOf(island, 'systolic');
  const diastolic = numberOf(island, 'diastolic');
  if (!isWholeWithin(systolic, BOUNDS.systolic)) return null;
  if (diastolic === null) {
    const method = hasTag(island, 'palpation') ? { method: 'palpation' as const } : {};
    return { reading: { vital: 'blood-pressure', value: { systolic, diastolic: null, ...method } } };
  }
  if (!isWholeWithin(diastolic, BOUNDS.diastolic) || systolic <= diastolic) return null;
  const unnamed = hasTag(island, 'bare');
  if (unnamed && (systolic < LEAST_UNNAMED.systolic || diastolic < LEAST_UNNAMED.diastolic)) return null;
  // "Pressure one twenty six seventy eight": where one number ends and the other begins is our reading.
  const split = hasTag(island, 'split');
  if (split && (diastolic < LEAST_SPLIT || systolic - diastolic < LEAST_BETWEEN)) return null;
  return {
    reading: { vital: 'blood-pressure', value: { systolic, diastolic } },
    known: { ...(unnamed ? { vital: 'inferred' } : {}), ...(split ? { value: 'inferred' } : {}) },
  };
}
