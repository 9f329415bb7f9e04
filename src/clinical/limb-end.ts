// What was said of circulation, sensation or motion at a limb's end: whole, impaired (weak, decreased) or lost.

import type { EntryOf } from './chart.ts';

type LimbCheck = EntryOf<'csm'>;

/** A pulse or a squeeze that is there and not as it should be. */
const LESS =
  /\b(?:weak\w*|thready|faint|decreased|diminished|reduced|less|poor|delayed|slow|sluggish|partial\w*)\b/i;

const isWeak = (strength: LimbCheck['strength']): boolean =>
  typeof strength === 'number' ? strength < 5 : strength === 'weak' || strength === 'unequal';

/** Said to be there, and weak or less than it should be; never intact, and not lost either. */
export const isLess = (entry: LimbCheck): boolean =>
  LESS.test((entry.quality ?? []).join(' ')) || (entry.aspect === 'motion' && isWeak(entry.strength));

/** Anything but whole: absent, weak or decreased. */
export const isImpaired = (entry: LimbCheck): boolean => !entry.present || isLess(entry);

/**
 * Wholly gone: said not to be there, and not merely less of it ("decreased sensation", "weak"), nor told by warmth or
 * refill alone, which a cold foot explains.
 */
export const isAbsent = (entry: LimbCheck): boolean =>
  !entry.present &&
  !isLess(entry) &&
  (entry.pulse !== undefined ||
    (entry.warmth === undefined &&
      entry.capRefillSeconds === undefined &&
      (entry.quality ?? []).length === 0));

/** In a word, for a sentence: `no pulse`, `weak`, `cold`, `intact`. */
export function limbWord(entry: LimbCheck): 'intact' | 'weak or less' | 'not intact' {
  if (!isImpaired(entry)) return 'intact';
  return isLess(entry) && (entry.present || entry.aspect !== 'circulation') ? 'weak or less' : 'not intact';
}
