// What the responder does to the problem list, by voice or by hand, as events; the entries themselves are not touched.

import { formatIso } from '../parse/times/index.ts';
import type { ProblemChange } from '../terms/index.ts';
import { append, type Exam } from './exam.ts';
import type { Planned } from './interpret.ts';
import { BY_HAND } from './taps.ts';

/** Where and when a change was said. */
export interface SaidThere {
  /** the words, as said */
  readonly heard: string;
  /** ISO 8601 with offset */
  readonly heardAt: string;
  readonly utterance: string;
}

/** What a spoken change makes happen to the record. */
export const problemsChanging =
  (change: ProblemChange, { heard, heardAt, utterance }: SaidThere): Planned =>
  () => ({ kind: 'problems', payload: { change: { ...change, heardAt }, by: heard, utterance } });

/** The examination with the problem list changed by hand; `time` in milliseconds since the epoch. */
export function changeProblems<C>(exam: Exam<C>, change: ProblemChange, time: number): Exam<C> {
  const heardAt = formatIso(time, exam.zone);
  return append(exam, heardAt, () => ({
    kind: 'problems',
    payload: { change: { ...change, heardAt }, by: BY_HAND, utterance: null },
  }));
}
