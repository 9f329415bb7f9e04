// An examination made of talk: every utterance heard in turn.

import { beginExam, type Exam, hearUtterance, keepingRefusals, type ReadsTalk } from '../record/index.ts';
import type { Talk } from './talk.ts';

/** Names the terminal in the log; entry identifiers begin with it. */
export const DEVICE = 'replay';

/** The examination after the whole talk. */
export function examine<Context>(reader: ReadsTalk<Context>, talk: Talk): Exam<Context> {
  const { startedAt, zone } = talk;
  const reads = keepingRefusals(reader);
  const begun = beginExam(reads, { device: DEVICE, startedAt, zone });
  return talk.utterances.reduce((exam, utterance) => hearUtterance(exam, reads, utterance), begun);
}

/** When the last thing was said, in milliseconds since the epoch: the moment a report of the talk is made for. */
export const endOf = (talk: Talk): number =>
  talk.utterances.reduce((latest, { heardAt }) => Math.max(latest, heardAt), talk.startedAt);
