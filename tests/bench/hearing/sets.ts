// The sets of sentences by their names, and parts of them: what is tuned on, and what is only reported on.

import { REPORT_EXAM, REPORT_ORDINARY } from './report-set.ts';
import { TUNING_EXAM, TUNING_ORDINARY } from './tuning-set.ts';
import { TUNING_HANDS_EXAM, TUNING_HANDS_ORDINARY } from './tuning-set-hands.ts';
import { TUNING_MORE_EXAM, TUNING_MORE_ORDINARY } from './tuning-set-more.ts';
import { TUNING_OTHERS_EXAM, TUNING_OTHERS_ORDINARY } from './tuning-set-others.ts';

export interface SentenceSet {
  /** what a responder says while examining */
  readonly exam: readonly string[];
  /** what people say besides, which should make no entry */
  readonly ordinary: readonly string[];
}

const SETS: Readonly<Record<string, SentenceSet>> = {
  tuning: {
    exam: [...TUNING_EXAM, ...TUNING_MORE_EXAM],
    ordinary: [...TUNING_ORDINARY, ...TUNING_MORE_ORDINARY],
  },
  more: { exam: TUNING_MORE_EXAM, ordinary: TUNING_MORE_ORDINARY },
  others: { exam: TUNING_OTHERS_EXAM, ordinary: TUNING_OTHERS_ORDINARY },
  hands: { exam: TUNING_HANDS_EXAM, ordinary: TUNING_HANDS_ORDINARY },
  report: { exam: REPORT_EXAM, ordinary: REPORT_ORDINARY },
};

/** The set of that name; throws where there is none. */
export function setOf(name: string): SentenceSet {
  const set = SETS[name];
  if (set === undefined)
    throw new Error(`There is no set ${name}; there are ${Object.keys(SETS).join(', ')}.`);
  return set;
}

/** `count` of them, evenly from the whole, or all where there are no more. */
export const evenly = (all: readonly string[], count: number): readonly string[] =>
  count >= all.length
    ? all
    : Array.from({ length: count }, (_, i) => all[Math.floor((i * all.length) / count)] ?? '');
