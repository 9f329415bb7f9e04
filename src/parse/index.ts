// Promises what a responder's talk means: an utterance and a context in, frames and a context out; it never throws.

export type { Context } from './context.ts';
export type {
  Change,
  Command,
  CommandFrame,
  CorrectionFrame,
  CorrectionTarget,
  Frame,
  PatientMeant,
  ProblemFrame,
  Reading,
  RecordMeant,
  StatementFrame,
} from './frame.ts';
export { createReader, type Reader, type ReaderMade } from './reader.ts';
export type { Utterance } from './utterance.ts';
