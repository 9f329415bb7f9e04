// Promises what a medic would work out from the entries, each rule beside its source; what was not said is unknown.

export { type Burns, burnsOf } from './burns/index.ts';
export { type Chart, chartOf } from './chart.ts';
export { type CoverageRow, type CoverageState, coverage, remaining } from './coverage.ts';
export type { Reckoned } from './evidence.ts';
export { type Score, type ScoreName, scoreCards } from './score/index.ts';
export { type Scores, scores } from './scores.ts';
export { CRITERIA, type Flag, type FlagState, flags } from './triage/index.ts';
