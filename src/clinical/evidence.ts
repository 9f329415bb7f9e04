// What every output carries: the entries it rests on, which of them nobody confirmed, what it lacks, and its source.

import type { Entry } from '../record/entry.ts';
import { type Source, sourceText } from './source.ts';

export interface Reckoned {
  /** ids of the entries it rests on */
  readonly evidence: readonly string[];
  /** those of them that nobody has confirmed yet */
  readonly unconfirmed: readonly string[];
  /** what would have to be known for a fuller answer, in plain words */
  readonly missing: readonly string[];
  readonly source: string;
}

const ids = (entries: readonly Entry[]): readonly string[] => [...new Set(entries.map((entry) => entry.id))];

/** The part that every output has in common. */
export const reckoned = (
  entries: readonly Entry[],
  source: Source,
  missing: readonly string[] = [],
): Reckoned => ({
  evidence: ids(entries),
  unconfirmed: ids(entries.filter((entry) => entry.state === 'heard')),
  missing: [...new Set(missing)],
  source: sourceText(source),
});
