// Promises patterns over time as trends with their numbers, never as a diagnosis.

import type { Chart } from '../chart.ts';
import { pulsePressureWidening, pulseUpPressureDown } from './circulation.ts';
import { cooling, fallingGcs, lostLimbPulses, skinCooling } from './decline.ts';
import type { Pattern } from './pattern.ts';

export type { Pattern } from './pattern.ts';

const RULES = [pulseUpPressureDown, pulsePressureWidening, fallingGcs, cooling, skinCooling, lostLimbPulses];

export const patternsOf = (chart: Chart): readonly Pattern[] => RULES.flatMap((rule) => rule(chart));
