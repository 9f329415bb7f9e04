// Promises the open record and what can be done with it; views show it and never alter it themselves.

export { beginRecord, recordToUse } from './begin.ts';
export { type Derived, derive } from './derived.ts';
export {
  type Aside,
  createDesk,
  type Desk,
  type DeskParts,
  type KeepSound,
  setRecord,
  type TurnedTo,
} from './desk.ts';
export { type Changed, change, confirm, passOn, restate, restore, retime, strike } from './hand.ts';
export { done, type Notice, trouble } from './notice.ts';
export {
  isUnderWay,
  lastHeardAt,
  type OpenRecord,
  type RecordFacts,
  type RecordKind,
  timeIn,
} from './open-record.ts';
export type { TalkReader } from './reader.ts';
export { say, sayWaiting } from './say.ts';
