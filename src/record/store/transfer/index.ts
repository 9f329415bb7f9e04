// Promises that records leave this device sealed unless a person asks otherwise, and come in only whole, checked and beside
// what is here.

export { type Exported, exportHeld, exportRecords, type HeldRecord, isSealed, readExport } from './file.ts';
export { type Merged, mergeRecord } from './merge.ts';
export { type BundleRead, readBundle } from './read-bundle.ts';
export { type ExportedRecord, eventShape } from './shape.ts';
export { squeeze, unsqueeze } from './squeeze.ts';
