// The systolic pressure under which a child counts as hypotensive in the PALS table.

import type { Source } from '../source.ts';

export const PALS_SOURCE: Source = {
  cite: 'American Heart Association, Pediatric Advanced Life Support: hypotension by age',
  mark: 'read',
  note: 'in secondary pages',
};

const DAYS_28 = 28 / 365.25;

/**
 * The limit in mmHg (hypotensive strictly under it) for an age in years: neonate 60, infant 70, 1 to 10 years
 * 70 + 2 x age, over 10 years 90. The triage guideline draws its own line: see triage/.
 */
export function palsSystolicLimit(years: number): number {
  if (years <= DAYS_28) return 60;
  if (years < 1) return 70;
  return years <= 10 ? 70 + 2 * Math.floor(years) : 90;
}
