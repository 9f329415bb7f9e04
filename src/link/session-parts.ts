// What a session of a phone in an incident is given, and what it shows of how things stand.

import type { RecordFacts } from '../record/store/index.ts';
import type { Ledger } from './ledger.ts';
import type { EventText } from './message.ts';
import type { Tally } from './outbox.ts';
import type { Line, LineState } from './port.ts';
import type { Word } from './word.ts';

export type Problem =
  /** another phone uses this code */
  | 'code-in-use'
  /** what the post has under this code is not what this phone sent */
  | 'other-history';

export interface SessionState {
  readonly line: LineState['state'];
  readonly tally: Tally;
  readonly problem: Problem | null;
  /** the post's last word and when it came, epoch ms by this phone's clock; null before the first */
  readonly word: Word | null;
  readonly wordAt: number | null;
  /** sentences on what cannot be sent or kept, empty where all is well */
  readonly troubles: readonly string[];
}

/** The log of one record as it is kept on the phone, or null where it is no longer there. */
export type ReadRecord = (
  record: string,
) => Promise<{ readonly facts: RecordFacts; readonly events: readonly EventText[] } | null>;

export interface SessionParts {
  readonly incident: string;
  readonly device: string;
  readonly key: CryptoKey;
  readonly line: Line;
  readonly ledger: Ledger;
  readonly read: ReadRecord;
  /** epoch ms */
  readonly clock: () => number;
  readonly pace?: Partial<Pace>;
}

export interface Pace {
  /** between two questions to the post, ms */
  readonly hello: number;
  /** a server has it and the post does not: after this long it is sent once more, ms */
  readonly patience: number;
  /** before trying again after a server's refusal or silence, ms */
  readonly again: number;
}

export interface Session {
  /** all events of one record that are on this phone's disk; those known already are passed over */
  offer(record: RecordFacts, events: readonly EventText[]): void;
  state(): SessionState;
  watch(changed: (state: SessionState) => void): () => void;
  /** settles when everything offered so far is in the book */
  settled(): Promise<void>;
  end(): Promise<void>;
}
