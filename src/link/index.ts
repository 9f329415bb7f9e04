// Promises that what a phone keeps reaches the post whole and in order, that the server on the way reads none of it, and
// that nothing is called “at the post” before the post has written it to its disk.

export { type Account, type Came, createAccount, type Standing } from './account.ts';
export { type BarWords, barWords } from './bar.ts';
export type { BoardDevice, BoardRow, FeedLine } from './board-feed.ts';
export { type Bytes, base64url, fromBase64url, random, sha256 } from './bytes.ts';
export { hasJoinCode, type JoinCode, type JoinRead, joinText, readJoinText } from './join-code.ts';
export { createMemoryLedger, type Ledger, type LedgerState } from './ledger.ts';
export { chainOf, type EventText, factsOf, hashOf, type Message, readMessage } from './message.ts';
export { createOutbox, type Got, NOTHING_GOT, type Outbox, type Row, type Tally } from './outbox.ts';
export { createPass, type Handed, type Offer, type Offered, type Pass } from './pass.ts';
export type { Asked, Heard, KeptMessage, Line, LineState, Reached, Stored, Stream } from './port.ts';
export { importKey, type Opened, open, seal } from './seal.ts';
export { startSession } from './session.ts';
export type { Pace, Problem, Session, SessionState } from './session-parts.ts';
export {
  askSubject,
  inboxOf,
  mayHear,
  mayPublish,
  NAME,
  POST_DOMAIN,
  passSubject,
  readRecordSubject,
  recordSubject,
  STREAM,
  STREAM_SUBJECTS,
  wordSubject,
} from './subjects.ts';
export {
  type Hello,
  inRuns,
  isQuestion,
  type Mate,
  type Question,
  type Run,
  readHello,
  readWord,
  runsInWords,
  runsOf,
  type Word,
} from './word.ts';
export { type Writes, writesNext } from './writes.ts';
