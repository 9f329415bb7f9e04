// Whether a limb's end was said to be whole: what is weak or decreased is there, and not as it should be.

import type { CsmStatement } from './statement.ts';

/** What decides how it is, of an entry or of a statement. */
type Checked = Pick<CsmStatement, 'aspect' | 'present' | 'quality' | 'strength'>;

/** A pulse or a squeeze that is there and not as it should be. */
export const LESS_WORD =
  /\b(?:weak\w*|thready|faint|decreased|diminished|reduced|less|poor|delayed|slow|sluggish|partial\w*)\b/i;

export const isWeak = (strength: Checked['strength']): boolean =>
  typeof strength === 'number' ? strength < 5 : strength === 'weak' || strength === 'unequal';

/** Said to be there, and weak or less than it should be; never intact, and not lost either. */
export const isLess = (entry: Checked): boolean =>
  LESS_WORD.test((entry.quality ?? []).join(' ')) || (entry.aspect === 'motion' && isWeak(entry.strength));

/** Anything but whole: absent, weak or decreased. */
export const isImpaired = (entry: Checked): boolean => !entry.present || isLess(entry);
