// Promises reports in the trade's orders, each line of which names the entries it came from, with nothing merged,
// nothing confirmed by silence, and nothing that was not examined shown as normal.

export { type Bundle, confirmationsOf, type FhirInput, fhirDocument } from './fhir/index.ts';
export {
  COARSE_BYTES,
  type Collection,
  FRAME_BYTES,
  framesOf,
  missingParts,
  partsInWords,
  readParts,
  takeFrame,
  wholeOf,
} from './frames/index.ts';
export type { CoverageRow, Flag, HandoffInput, ProblemRow, ScoreCard, Scores } from './input.ts';
export { mist } from './orders/atmist.ts';
export { imistAmbo } from './orders/imist-ambo.ts';
export { sbar } from './orders/sbar.ts';
export {
  type PrintedRecord,
  type PrintedTable,
  printedRecord,
  UNCONFIRMED_SIGN,
  type VitalChart,
  vitalCharts,
} from './print/index.ts';
export { CHUNK_WORDS, type Chunk } from './radio/chunks.ts';
export { type CriticalName, type CriticalValue, criticalValues } from './radio/critical.ts';
export { radioDetails } from './radio/details.ts';
export { DIGIT_SOUNDS, DIGIT_WORDS, SOUNDS, sayFigures } from './radio/digits.ts';
export { CLEAN_WORDS, RADIO_ORDERS, type RadioOrder, SERIOUS_WORDS, wordBudget } from './radio/keep.ts';
export { RADIO_STEPS, radio } from './radio/script.ts';
export { SPELLING_ALPHABET, spell } from './radio/spelling.ts';
export { compareReadBack, type ReadBackRow, sayAgain } from './read-back/index.ts';
export { soap } from './soap/soap.ts';
export { type HandoffLine, type HandoffText, type Sentence, textOf } from './text.ts';
export { type ReportBefore, radioUpdate, updateSince } from './update/index.ts';
