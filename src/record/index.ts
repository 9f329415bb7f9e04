// Promises that what was heard becomes entries through an append-only log, and that nothing said is lost on the way.

export { aloneBecause } from './alone.ts';
export { isPlainConfirm, nextToConfirm } from './confirming.ts';
export { type Entry, type EntryFacts, type EntryState, firstTold, standing, stands } from './entry.ts';
export type { EnteredEntry, EventFacts, Happening, LoggedUtterance, RecordEvent, Unheard } from './event.ts';
export { EVENT_KINDS, FORMAT } from './event.ts';
export type { Beginning, Exam, HeardUtterance } from './exam.ts';
export { beginExam, hearUtterance } from './exam.ts';
export { type Filed, type Filing, fileExam, UNFILED } from './filing.ts';
export { type HandoverStep, handOver, type KeptStep, type ReportPart } from './handover.ts';
export { type Merged, mergeLogs } from './merge.ts';
export { type Migrated, migrate } from './migrate.ts';
export { type Patients, type SaidTurn, type Turn, turnIn, turnTo } from './patients.ts';
export { changeProblems, problemsChanging } from './problems.ts';
export { type ReadsTalk, UNREADABLE } from './reads-talk.ts';
export { keepingRefusals } from './refused-speech.ts';
export { EMPTY, type Group, type RecordState } from './state.ts';
export { statementOf } from './statement-of.ts';
export { fold, step } from './step.ts';
export {
  BY_HAND,
  confirmEntries,
  type Edited,
  editEntry,
  restoreEntries,
  retimeEntry,
  strikeEntries,
} from './taps.ts';
export { logUnheard } from './unheard.ts';
export { heardOtherwise, type WordHeard } from './unsure.ts';
