// Promises to keep records on this device so that they cannot be lost, altered unseen, or read by a stranger.

export type { Fault, Head, Verdict } from '../chain/index.ts';
export { newName } from './bytes.ts';
export { type Clip, dropClips, keepClip, readClip, type Sound, soundKept, soundOf } from './clips.ts';
export { type FailureKind, failureOf, isStoreFailure, type StoreFailure, storeFailure } from './failure.ts';
export { createIdbShelf, DATABASE, OBJECT_STORE } from './idb-shelf.ts';
export {
  type Addition,
  appendToLog,
  damagedFile,
  emptyEnd,
  type Listed,
  listRecords,
  type ReadLog,
  type RecordFacts,
  type RecordKind,
  type RecordRow,
  readLog,
  takeOverOpenRecords,
} from './log/index.ts';
export { joinPages, type Pages, type Role, type Told } from './pages.ts';
export { linkKey, OPEN_KEY, placeOf } from './places.ts';
export { type Keys, seal, unseal } from './sealed.ts';
export type { Key, Placed, Shelf, Write } from './shelf.ts';
export { createStrictStore } from './strict-store.ts';
export * from './vault/index.ts';
export { type Left, wipeEverything } from './wipe.ts';
export { createWitness, type Witness, type WitnessStorage } from './witness.ts';
