// Promises that an utterance's sound takes 8 kB a second, and can be heard again.

export { BYTES_A_SECOND, type CompressedSound, compressed, uncompressed } from './clip.ts';
