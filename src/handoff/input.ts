// What a handoff is made from: the entries, and what was worked out from them, as plain data.

import type { Entry } from '../record/entry.ts';
import type { Side, Site } from '../terms/index.ts';

export interface CoverageRow {
  readonly site: Site;
  readonly side: Side | null;
  readonly state: 'not-examined' | 'touched' | 'clear' | 'found';
}

export interface Flag {
  readonly rule: string;
  readonly level: 'red' | 'yellow';
  readonly state: 'met' | 'not-met' | 'unknown';
  /** the criterion in words */
  readonly text: string;
  /** ids of the entries it rests on */
  readonly evidence: readonly string[];
  /** the publication it comes from */
  readonly source: string;
}

export interface Scores {
  readonly gcs: number | null;
  /** pulse over systolic pressure, no unit */
  readonly shockIndex: number | null;
  /** mmHg */
  readonly meanArterialPressure: number | null;
  /** percent of the body's surface */
  readonly burnPercent: number | null;
}

export interface HandoffInput {
  /** ISO 8601 with offset */
  readonly startedAt: string;
  /** all of them, in the order spoken; struck and replaced ones are passed over */
  readonly entries: readonly Entry[];
  readonly coverage: readonly CoverageRow[];
  readonly flags?: readonly Flag[];
  readonly scores?: Scores;
  /** milliseconds since the epoch: when the report is made */
  readonly now: number;
}
