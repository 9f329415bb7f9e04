// Promises the microphone's sound in blocks with their times, and news of whatever befalls it.

export type { SoundLevel } from './loudness.ts';
export {
  type Microphone,
  type MicrophoneNews,
  type MicrophoneParts,
  openMicrophone,
} from './open-microphone.ts';
export { type Refusal, refusalOf } from './refusal.ts';
export type { SoundBlock } from './tap.ts';
