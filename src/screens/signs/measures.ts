// Which measures are drawn as the course of which vital sign.

import type { Measure } from '../../clinical/index.ts';
import type { Vital } from '../../terms/index.ts';

export const MEASURES_OF: Readonly<Partial<Record<Vital, readonly Measure[]>>> = {
  pulse: ['pulse'],
  respirations: ['respirations'],
  'blood-pressure': ['systolic', 'diastolic'],
  'oxygen-saturation': ['oxygen-saturation'],
  temperature: ['temperature'],
  glucose: ['glucose'],
  'pain-score': ['pain-score'],
  gcs: ['gcs'],
  'capillary-refill': ['capillary-refill'],
};
