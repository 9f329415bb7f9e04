// Promises the browser's own recognition as it is: what it offers, why it stops, and its results without the repeats.

export { faultOf, NO_PHRASES, type RecognitionFault } from './error.ts';
export { installOnDevice, type OnDevice, onDevice } from './on-device.ts';
export { type LikelyPhrase, likelyPhrases } from './phrases.ts';
export {
  type HeardEvent,
  type HeardResult,
  type PhraseMaker,
  phrasesIn,
  type Recognition,
  type RecognitionMaker,
  recognitionIn,
} from './recognition.ts';
export { createReplays, type Replays } from './replays.ts';
