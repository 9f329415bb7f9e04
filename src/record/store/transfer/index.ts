// Promises that records leave this device only encrypted, and come in only whole, checked and beside what is here.

export { type Exported, exportRecords, readExport } from './file.ts';
export { type Merged, mergeRecord } from './merge.ts';
export { type BundleRead, readBundle } from './read-bundle.ts';
export { type ExportedRecord, eventShape } from './shape.ts';
