// Promises a second report that says only what changed since the first, each with its time.

export { type ReportBefore, radioUpdate, updateSince } from './update.ts';
