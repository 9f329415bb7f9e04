// What the post tells a board, as lines of JSON: rows that changed, and a record's events; a board only reads and asks.

import type { RecordEvent } from '../record/index.ts';
import type { RecordFacts } from '../record/store/index.ts';

export interface BoardRow {
  readonly record: string;
  readonly patient: number;
  readonly label: string;
  readonly name: string;
  readonly tag: string;
  readonly place: string;
  readonly kind: RecordFacts['kind'];
  /** 1 worst, and the rule in words */
  readonly rank: number;
  readonly why: string;
  readonly reds: number;
  /** each latest reading with its time, as a timeline writes it */
  readonly vitals: readonly {
    readonly name: string;
    readonly reading: string;
    readonly at: string;
    readonly confirmed: boolean;
  }[];
  readonly flags: readonly {
    readonly level: 'red' | 'yellow';
    readonly text: string;
    readonly unconfirmed: number;
    readonly of: number;
    readonly source: string;
  }[];
  readonly trends: readonly string[];
  /** what is due, or null */
  readonly due: string | null;
  readonly overdueMinutes: number;
  /** whose phone began it, by name: two phones may each have a first patient */
  readonly begunBy: string;
  /** who writes it, by name */
  readonly writer: string;
  /** others who wrote to it after it had been handed over */
  readonly also: readonly string[];
  /** entries nobody has confirmed */
  readonly unconfirmed: number;
  readonly entries: number;
  /** epoch ms, the post's clock */
  readonly heardAt: number;
  readonly closed: boolean;
  /** in plain words */
  readonly troubles: readonly string[];
  readonly questions: readonly {
    readonly id: string;
    readonly text: string;
    readonly at: string;
    readonly there: boolean;
    readonly answer: string | null;
  }[];
}

export interface BoardDevice {
  readonly device: string;
  readonly name: string;
  readonly out: boolean;
  readonly heardAt: number | null;
  readonly made: number | null;
  readonly here: number;
  readonly troubles: readonly string[];
}

export type FeedLine =
  | {
      readonly line: 'board';
      readonly incident: string;
      /** epoch ms, the post's clock */
      readonly now: number;
      /** records in order, worst first */
      readonly order: readonly string[];
      /** those that changed since the line before */
      readonly rows: readonly BoardRow[];
      readonly devices: readonly BoardDevice[];
      /** what the post itself cannot do */
      readonly troubles: readonly string[];
    }
  | {
      readonly line: 'record';
      readonly facts: RecordFacts;
      /** true where these take the place of all that was told before */
      readonly anew: boolean;
      readonly events: readonly RecordEvent[];
    };
