// Everything worked out from the entries at one moment: the same entries and the same moment give the same reckoning.

import type { Entry } from '../record/entry.ts';
import { type Burns, burnsOf } from './burns/index.ts';
import { type Chart, chartOf, vitalsOf } from './chart.ts';
import { type Clock, clocksOf } from './clocks.ts';
import { type Conflict, conflictsOf } from './conflicts/index.ts';
import { type CoverageRow, coverage, remaining } from './coverage.ts';
import * as exam from './exam/index.ts';
import { type Pattern, patternsOf } from './patterns/index.ts';
import { type Problem, type ProblemOrder, problemsOf } from './problems/index.ts';
import { type ChildRange, childRanges, type Score, scoreCards } from './score/index.ts';
import { type Scores, scoresOf } from './scores.ts';
import { SPINE_NOTE, type SpineItem, spineItems } from './spine/index.ts';
import { type Flag, flagsOf } from './triage/index.ts';
import * as vitals from './vitals/index.ts';

export interface ReckonOptions {
  /** epoch ms */
  readonly now: number;
  readonly due?: vitals.DueOptions;
  /** 2 only where a prescriber set the 88 to 92 % target */
  readonly saturationScale?: 1 | 2;
  readonly problems?: ProblemOrder;
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

function stabilityOf(chart: Chart, flags: readonly Flag[], patterns: readonly Pattern[]): vitals.Stability {
  if (patterns.length > 0 || flags.some((flag) => flag.level === 'red' && flag.state === 'met'))
    return 'unstable';
  const asked = flags.filter((flag) => FUNCTION.includes(flag.rule));
  const taken = TAKEN.every((vital) => vitalsOf(chart, vital).length > 0);
  return taken && asked.every((flag) => flag.state === 'not-met') ? 'stable' : 'unknown';
}

/** Reckons from the standing entries alone. Every part carries its entries, what it lacks, and its source. */
export function reckon(entries: readonly Entry[], options: ReckonOptions): Reckoning {
  const chart = chartOf(entries);
  const rows = coverage(chart.all);
  const sets = vitals.setsOf(chart);
  const flags = flagsOf(chart);
  const patterns = patternsOf(chart);
  return {
    coverage: rows,
    remaining: remaining(rows),
    steps: exam.stepsOf(rows),
    limbEnds: exam.limbEndsOf(chart),
    focus: exam.focusOf(chart),
    rechecks: exam.rechecksOf(chart),
    scores: scoresOf(chart),
    scoreCards: scoreCards(chart, options.saturationScale),
    childRanges: childRanges(chart),
    series: vitals.seriesOf(vitals.pointsOf(chart)),
    sets,
    due: vitals.dueOf(sets, stabilityOf(chart, flags, patterns), options.now, options.due),
    flags,
    burns: burnsOf(chart),
    spine: { note: SPINE_NOTE, items: spineItems(chart) },
    patterns,
    conflicts: conflictsOf(chart),
    clocks: clocksOf(chart, options.now),
    problems: problemsOf(chart, flags, options.problems),
  };
}
