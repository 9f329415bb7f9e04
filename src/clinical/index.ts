// Promises what a medic would work out from the entries, each rule beside its source; what was not said is unknown.

export { type BurnRegion, type Burns, burnsOf } from './burns/index.ts';
export { type Chart, chartOf } from './chart.ts';
export type { Clock } from './clocks.ts';
export type { Conflict } from './conflicts/index.ts';
export { type CoverageRow, type CoverageState, coverage, remaining } from './coverage.ts';
export type { Reckoned } from './evidence.ts';
export {
  type Focus,
  type LimbEnd,
  nextStep,
  type Recheck,
  type Step,
  TAUGHT,
  uncompared,
} from './exam/index.ts';
export { leftParts, leftText } from './left-text.ts';
export { isImpaired, limbWord } from './limb-end.ts';
export { betterThan, betterWords } from './limb-return.ts';
export type { Memo } from './memo.ts';
export type { Pattern } from './patterns/index.ts';
export { graveness, isGrave, type Problem } from './problems/index.ts';
export { type Reckoning, type ReckonOptions, reckon, reckonAfter, type Worked } from './reckoning.ts';
export { GCS_HIGHEST, type GcsComponent } from './score/gcs.ts';
export { type ChildRange, type Score, type ScoreName, scoreCards } from './score/index.ts';
export { type Scores, scores } from './scores.ts';
export type { ItemState, SpineItem } from './spine/index.ts';
export { tellsFound } from './told/found.ts';
export {
  offOf,
  quotedWords,
  type SaidOff,
  saidOffWords,
  type Tourniquet,
  tourniquetsOf,
} from './tourniquets/index.ts';
export { CRITERIA, type Flag, type FlagState, flags } from './triage/index.ts';
export {
  type AbnormalSign,
  abnormalNow,
  type Due,
  type DueOptions,
  isBeyond,
  type Measure,
  type Series,
  type SeriesPoint,
  type Speaking,
  type Stability,
  spokenReminder,
  type VitalSet,
} from './vitals/index.ts';
