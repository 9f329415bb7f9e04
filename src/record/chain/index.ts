// Promises that a log in which an event was altered, moved, added or cut away is noticed, and where.

export { eachOf } from './at-once.ts';
export { canonical } from './canonical.ts';
export { beginChain, type Digest, linkAfter } from './link.ts';
export { type Fault, type Head, type Stored, type Verdict, verifyLog } from './verify.ts';
