// Everything worked out from the entries at one moment: the same entries and the same moment give the same reckoning.

import type { Entry } from '../record/entry.ts';
import type { SaidProblemChange } from '../terms/index.ts';
import { type Burns, burnsOf } from './burns/index.ts';
import { type Chart, type Rule, vitalsOf } from './chart.ts';
import { type Clock, clockAt, clockedOf } from './clocks.ts';
import { CONFLICT_RULES, type Conflict } from './conflicts/index.ts';
import { COVERAGE_RULES, type CoverageRow, remaining } from './coverage.ts';
import * as exam from './exam/index.ts';
import { askAfter, type Memo } from './memo.ts';
import { PATTERN_RULES, type Pattern } from './patterns/index.ts';
import { PROBLEM_RULES, type Problem, problemsOf } from './problems/index.ts';
import { type ChildRange, childRanges, SCORE_RULES, type Score } from './score/index.ts';
import { type Scores, scoresOf } from './scores.ts';
import { SPINE_NOTE, SPINE_RULES, type SpineItem } from './spine/index.ts';
import { FLAG_RULES, type Flag } from './triage/index.ts';
import * as vitals from './vitals/index.ts';

export interface ReckonOptions {
  /** epoch ms */
  readonly now: number;
  readonly due?: vitals.DueOptions;
  /** 2 only where a prescriber set the 88 to 92 % target */
  readonly saturationScale?: 1 | 2;
  /** what the responder did to the problem list, in the order said */
  readonly problems?: readonly SaidProblemChange[];
}

export interface Reckoning {
  readonly coverage: readonly CoverageRow[];
  readonly remaining: readonly CoverageRow[];
  readonly steps: readonly exam.Step[];
  readonly limbEnds: readonly exam.LimbEnd[];
  readonly focus: readonly exam.Focus[];
  readonly rechecks: readonly exam.Recheck[];
  readonly scores: Scores;
  readonly scoreCards: readonly Score[];
  readonly childRanges: readonly ChildRange[];
  readonly series: readonly vitals.Series[];
  readonly sets: readonly vitals.VitalSet[];
  readonly due: vitals.Due;
  readonly flags: readonly Flag[];
  readonly burns: Burns | null;
  readonly spine: { readonly note: string; readonly items: readonly SpineItem[] };
  readonly patterns: readonly Pattern[];
  readonly conflicts: readonly Conflict[];
  readonly clocks: readonly Clock[];
  readonly problems: readonly Problem[];
  /** questions that the responder's changes of the problem list leave open */
  readonly problemQuestions: readonly string[];
}

/** The criteria of body function that must all have been asked, and be not met, before a patient counts as stable. */
const FUNCTION = [
  'commands',
  'breathing-rate',
  'systolic-child',
  'systolic-10-to-64',
  'systolic-65-up',
  'pulse-over-systolic',
];

/** And the vitals without which nobody can be called stable, whatever the criteria make of the age. */
const TAKEN = ['pulse', 'blood-pressure', 'respirations'] as const;

const vitalsTaken = (chart: Chart): boolean => TAKEN.every((vital) => vitalsOf(chart, vital).length > 0);

function stabilityOf(taken: boolean, flags: readonly Flag[], patterns: readonly Pattern[]): vitals.Stability {
  if (patterns.length > 0 || flags.some((flag) => flag.level === 'red' && flag.state === 'met'))
    return 'unstable';
  const asked = flags.filter((flag) => FUNCTION.includes(flag.rule));
  return taken && asked.every((flag) => flag.state === 'not-met') ? 'stable' : 'unknown';
}

/** A reckoning with what it takes to work out the next one from it. */
export interface Worked {
  readonly reckoning: Reckoning;
  readonly memo: Memo;
}

/**
 * Reckons after an earlier time: a rule is asked again only where an entry that it looked at is new, altered or gone,
 * and what is not asked again stays the very same object. The outcome equals that of `reckon`; `before` may be null,
 * or any earlier memo, and is never changed.
 */
export function reckonAfter(before: Memo | null, entries: readonly Entry[], options: ReckonOptions): Worked {
  const { ask, memo } = askAfter(before, entries);
  const each = <T>(rules: readonly Rule<T>[]): readonly T[] => rules.map(ask);
  const every = <T>(rules: readonly Rule<readonly T[]>[]): readonly T[] => {
    const rows: T[] = [];
    for (const rule of rules) for (const row of ask(rule)) rows.push(row);
    return rows;
  };
  const rows = every(COVERAGE_RULES);
  const sets = ask(vitals.setsOf);
  const flags = each(FLAG_RULES);
  const patterns = every(PATTERN_RULES);
  const cards = each(SCORE_RULES[options.saturationScale ?? 1]);
  const burns = ask(burnsOf);
  const listed = problemsOf(every(PROBLEM_RULES), flags, options.problems);
  const stability = stabilityOf(ask(vitalsTaken), flags, patterns);
  return {
    reckoning: {
      coverage: rows,
      remaining: remaining(rows),
      steps: each(exam.STEP_RULES),
      limbEnds: each(exam.LIMB_END_RULES),
      focus: every(exam.FOCUS_RULES),
      rechecks: ask(exam.rechecksOf),
      scores: scoresOf(cards, burns),
      scoreCards: cards,
      childRanges: ask(childRanges),
      series: every(vitals.SERIES_RULES),
      sets,
      due: vitals.dueOf(sets, stability, options.now, options.due),
      flags,
      burns,
      spine: { note: SPINE_NOTE, items: each(SPINE_RULES) },
      patterns,
      conflicts: every(CONFLICT_RULES),
      clocks: ask(clockedOf).map((clocked) => clockAt(clocked, options.now)),
      problems: listed.problems,
      problemQuestions: listed.questions,
    },
    memo: memo(),
  };
}

/** Reckons from the standing entries alone. Every part carries its entries, what it lacks, and its source. */
export const reckon = (entries: readonly Entry[], options: ReckonOptions): Reckoning =>
  reckonAfter(null, entries, options).reckoning;
