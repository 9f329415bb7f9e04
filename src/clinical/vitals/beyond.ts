// Whether one reading alone speaks against calling the patient well; it decides how a report words that nothing was found.

import type { VitalReading } from '../../terms/index.ts';
import { PULSE, pointsIn, RESPIRATION, SPO2_SCALE_1, SYSTOLIC } from '../score/news2-table.ts';

/** NEWS2 calls for a review from 3 points in one sign on; 2 are the half-way mark that is taken here. Common practice, no source. */
const POINTS = 2;

/** True for a rate, pressure or saturation with points in NEWS2 (a child's may be ordinary), and for less than full alertness. */
export function isBeyond(reading: VitalReading): boolean {
  switch (reading.vital) {
    case 'pulse':
      return reading.value.rate !== undefined && pointsIn(reading.value.rate, PULSE) >= POINTS;
    case 'respirations':
      return reading.value.rate !== undefined && pointsIn(reading.value.rate, RESPIRATION) >= POINTS;
    case 'oxygen-saturation':
      return pointsIn(reading.value.percent, SPO2_SCALE_1) >= POINTS;
    case 'blood-pressure':
      return pointsIn(reading.value.systolic, SYSTOLIC) >= POINTS;
    case 'gcs':
      return reading.value.total !== undefined && reading.value.total < 15;
    case 'responsiveness':
      return reading.value.avpu !== undefined && reading.value.avpu !== 'A';
    default:
      return false;
  }
}
