// Promises the sound of a WAV recording, mono, in blocks, at the rate asked for; what is no sound is a value that says why.

export { highPass } from './high-pass.ts';
export { type OpenWav, openWav } from './open-wav.ts';
export { type Resampler, resampler } from './resample.ts';
export type { WavEnd, WavFault } from './wav-fault.ts';
