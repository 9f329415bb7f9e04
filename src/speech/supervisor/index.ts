// Promises an ear that stays awake: it is started and stopped by a person, mends itself in between, and names every gap.

export {
  type BundledEar,
  type BundledEarNews,
  type BundledEarParts,
  createBundledEar,
} from './bundled-ear.ts';
export { hearRecording, type RecordingHeard, type RecordingInHand } from './hear-recording.ts';
export { type HeardWords, keepRecognising, type Recogniser } from './keep-recognising.ts';
export type { EarNow, Gap } from './now.ts';
export { makeEarWorker, tapAddress } from './threads.ts';
