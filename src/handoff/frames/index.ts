// Promises bytes as texts of QR symbols and back: any order, any repeats, every misread noticed, what is missing named.

export { fromBase45, toBase45 } from './base45.ts';
export { type Collection, missingParts, type Taken, takeFrame, type Whole, wholeOf } from './collect.ts';
export { crc32 } from './crc32.ts';
export { COARSE_BYTES, FRAME_BYTES, type Frame, framesOf, readFrame } from './frame.ts';
export { partsInWords, readParts } from './part-list.ts';
