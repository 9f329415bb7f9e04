// The one number of a sign that a bare figure puts right.

import type { VitalStatement } from '../../../terms/index.ts';

/** The number that a correction by a bare figure means. */
export function mainOf({ vital, value }: VitalStatement): number | null {
  switch (vital) {
    case 'pulse':
    case 'respirations':
      return value.rate ?? null;
    case 'blood-pressure':
      return value.systolic;
    case 'oxygen-saturation':
      return value.percent;
    case 'gcs':
      return value.total ?? null;
    case 'pain-score':
      return value.score;
    case 'capillary-refill':
      return value.seconds;
    case 'temperature':
      return value.celsius;
    default:
      return null;
  }
}
