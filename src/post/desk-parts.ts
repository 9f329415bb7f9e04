// What the desk of a command post is given, and what it offers to the board and to the server beside it.

import type { Line, Question, Stream } from '../link/index.ts';
import type { Devices } from './devices.ts';
import type { Kept, PostLog } from './log.ts';
import type { Records } from './records.ts';

export interface DeskParts {
  readonly incident: string;
  readonly key: CryptoKey;
  readonly line: Line;
  readonly devices: Devices;
  /** keeps the questions over a restart; what it rejects with is said to who asked */
  readonly keepQuestions: (questions: readonly Question[]) => Promise<void>;
  readonly questions: readonly Question[];
  /** opens the log and hands over what it holds */
  readonly openLog: (each: (kept: Kept) => Promise<void>) => Promise<PostLog>;
  /** epoch ms */
  readonly clock: () => number;
  readonly newId: () => string;
}

export interface DeviceView {
  readonly device: string;
  readonly name: string;
  readonly out: boolean;
  /** epoch ms, the post's clock; null before it was heard of since the post began */
  readonly heardAt: number | null;
  /** how far the phone's clock is ahead of the post's, ms; null where it is not known */
  readonly ahead: number | null;
  /** messages that the phone says it made, and those that are here */
  readonly made: number | null;
  readonly here: number;
  /** in plain words, empty where all is well */
  readonly troubles: readonly string[];
}

export interface Desk {
  readonly records: Records;
  readonly log: PostLog;
  devices(): readonly DeviceView[];
  /** what the post itself cannot do at present, in plain words */
  troubles(): readonly string[];
  /** reads a stream of the server from where the log ends; gives what ends it */
  follow(stream: Stream): () => void;
  /** asks the responder who writes the record; false where there is no such record; rejects where it cannot be kept */
  question(record: string, text: string): Promise<boolean>;
  questions(): readonly Question[];
  /** counts what came since it began */
  readonly counts: { logged: number; again: number; foreign: number; batches: number };
  /** settles when all that came so far is written */
  settled(): Promise<void>;
  close(): Promise<void>;
}
