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

/** A problem as it was reckoned from the entries, or as the responder added it. */
export interface ProblemRow {
  readonly text: string;
  /** ids of the entries it rests on; none for one that the responder added */
  readonly evidence: readonly string[];
  readonly by: 'findings' | 'responder';
  /** true where the responder took it off the list; its findings are still told */
  readonly struck: boolean;
}

/** A score that was worked out, with what it rests on. */
export interface ScoreCard {
  readonly score: string;
  readonly value: number | null;
  readonly evidence: readonly string[];
}

export interface HandoffInput {
  /** ISO 8601 with offset */
  readonly startedAt: string;
  /** all of them, in the order spoken; struck and replaced ones are passed over */
  readonly entries: readonly Entry[];
  readonly coverage: readonly CoverageRow[];
  readonly flags?: readonly Flag[];
  readonly scores?: Scores;
  /** where they are given, the scores name the entries that these rest on */
  readonly scoreCards?: readonly ScoreCard[];
  /** worst first, or as the responder ordered them; without it the report keeps an order of its own */
  readonly problems?: readonly ProblemRow[];
  /** milliseconds since the epoch: when the report is made */
  readonly now: number;
}
