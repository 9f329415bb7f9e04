// Promises that an event once kept is read again as it was, in its place, or is named as missing or damaged.

export { type Addition, appendToLog, emptyEnd } from './append.ts';
export { takeOverOpenRecords } from './before.ts';
export { damagedFile } from './damaged.ts';
export { type RecordFacts, type RecordKind, type RecordRow, readRecordRow } from './facts.ts';
export { type Listed, listRecords, type ReadLog, readLog } from './read.ts';
