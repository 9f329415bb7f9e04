// Promises every criterion of the 2021 field triage guideline as met, not met or unknown, and never a destination.

import type { Entry } from '../../record/entry.ts';
import type { Truth } from '../answer.ts';
import { type Chart, chartOf, type Rule } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { type Criterion, type Level, TRIAGE_SOURCE } from './criterion.ts';
import { RED } from './red.ts';
import { YELLOW } from './yellow.ts';

export type FlagState = 'met' | 'not-met' | 'unknown';

export interface Flag extends Reckoned {
  readonly rule: string;
  /** the code of the criterion in NEMSIS v3.5.1 */
  readonly code: string;
  readonly level: Level;
  readonly state: FlagState;
  /** the criterion and why it stands as it does */
  readonly text: string;
}

const STATE: Readonly<Record<Truth, FlagState>> = { yes: 'met', no: 'not-met', unknown: 'unknown' };

export const CRITERIA: readonly Criterion[] = [...RED, ...YELLOW];

function flagOf(criterion: Criterion, chart: Chart): Flag {
  const answer = criterion.decide(chart);
  const because = [...new Set(answer.because)].filter((reason) => reason !== '').join('; ');
  const base = reckoned(answer.evidence, TRIAGE_SOURCE, answer.missing);
  const tail = answer.truth === 'yes' ? ' Local protocol decides.' : '';
  return {
    rule: criterion.rule,
    code: criterion.code,
    level: criterion.level,
    state: STATE[answer.truth],
    ...base,
    missing: answer.truth === 'unknown' ? base.missing : [],
    source: `${base.source}; NEMSIS ${criterion.code}`,
    text: `${criterion.text}${because === '' ? '.' : `: ${because}.`}${tail}`,
  };
}

/** A rule for each criterion, red ones first. */
export const FLAG_RULES: readonly Rule<Flag>[] = CRITERIA.map(
  (criterion) => (chart) => flagOf(criterion, chart),
);

/**
 * Every red and yellow criterion with its state, entries and source. `unknown` names in `missing` what would decide it.
 * `now` (epoch ms) changes none of them; it is taken so that all parts are asked alike.
 */
export function flags(entries: readonly Entry[], _when: { readonly now: number }): readonly Flag[] {
  const chart = chartOf(entries);
  return FLAG_RULES.map((rule) => rule(chart));
}
