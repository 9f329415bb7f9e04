// Promises patterns over time as trends with their numbers, never as a diagnosis.

import type { Rule } from '../chart.ts';
import { pulsePressureWidening, pulseUpPressureDown } from './circulation.ts';
import { cooling, fallingGcs, LIMB_RULES, skinCooling } from './decline.ts';
import type { Pattern } from './pattern.ts';

export type { Pattern } from './pattern.ts';

export const PATTERN_RULES: readonly Rule<readonly Pattern[]>[] = [
  pulseUpPressureDown,
  pulsePressureWidening,
  fallingGcs,
  cooling,
  skinCooling,
  ...LIMB_RULES,
];
