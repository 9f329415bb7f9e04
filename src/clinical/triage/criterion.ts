// The shape of one triage criterion, and the guideline that all of them come from.

import type { Answer } from '../answer.ts';
import type { Chart } from '../chart.ts';
import type { Source } from '../source.ts';

export const TRIAGE_SOURCE: Source = {
  cite: 'National guideline for the field triage of injured patients, 2021: Newgard CD et al. J Trauma Acute Care Surg 2022;93(2):e49-e60',
  mark: 'read',
  note: 'criteria read in NEMSIS v3.5.1 eInjury; volume and pages from memory',
};

export type Level = 'red' | 'yellow';

export interface Criterion {
  /** our name of the criterion */
  readonly rule: string;
  /** the code that NEMSIS v3.5.1 gives it */
  readonly code: string;
  readonly level: Level;
  /** the criterion in its published terms */
  readonly text: string;
  /** yes: met; no: not met; unknown: with what would decide it */
  readonly decide: (chart: Chart) => Answer;
}

export const red = (code: string, rule: string, text: string, decide: Criterion['decide']): Criterion => ({
  rule,
  code,
  level: 'red',
  text,
  decide,
});

export const yellow = (code: string, rule: string, text: string, decide: Criterion['decide']): Criterion => ({
  rule,
  code,
  level: 'yellow',
  text,
  decide,
});
