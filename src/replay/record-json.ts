// The record as the contract's JSON, `fieldsay-record/1`: entries, coverage, scores, flags and the reports made of them.

import { coverage, flags, scores } from '../clinical/index.ts';
import { type HandoffInput, mist, radio, soap, textOf } from '../handoff/index.ts';
import type { RecordState } from '../record/index.ts';

/** What the reports are made from; `now` in milliseconds since the epoch is the moment they are made for. */
export function handoffInput(state: RecordState, startedAt: string, now: number): HandoffInput {
  const { entries } = state;
  return {
    startedAt,
    entries,
    coverage: coverage(entries),
    flags: flags(entries, { now }),
    scores: scores(entries, { now }),
    now,
  };
}

/** The record as plain data, ready to be written as JSON; `file` is named where there are several. */
export function recordJson(input: HandoffInput, file: string | null): object {
  const { startedAt, entries } = input;
  return {
    schema: 'fieldsay-record/1',
    ...(file === null ? {} : { file }),
    startedAt,
    entries,
    coverage: input.coverage,
    scores: input.scores,
    flags: input.flags,
    handoff: { soap: textOf(soap(input)), mist: textOf(mist(input)), radio: radioTexts(input) },
  };
}

/** The radio report, a text for each chunk. */
export const radioTexts = (input: HandoffInput): readonly string[] =>
  radio(input).chunks.map(({ text }) => text);
