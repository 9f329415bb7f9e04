// The record as the contract's JSON, `fieldsay-record/1`: entries, coverage, scores, flags and the reports made of them.

import { reckon } from '../clinical/index.ts';
import { type HandoffInput, mist, radio, radioDetails, soap, textOf } from '../handoff/index.ts';
import type { Entry, RecordState } from '../record/index.ts';

/** What the reports are made from; `now` in milliseconds since the epoch is the moment they are made for. */
export function handoffInput(state: RecordState, startedAt: string, now: number): HandoffInput {
  const { entries } = state;
  const { coverage, flags, scores, scoreCards, problems } = reckon(entries, {
    now,
    problems: state.problemChanges,
  });
  return { startedAt, entries, coverage, flags, scores, scoreCards, problems, now };
}

/** The entry by the contract's fields and no more: what only the reports need stays inside. */
const byContract = ({ firstHeardAt, ...entry }: Entry): object => entry;

/**
 * The record as plain data, ready to be written as JSON; `file` is named where there are several. Other patients that
 * the talk turned to have records of their own within it.
 */
export function recordJson(
  input: HandoffInput,
  file: string | null,
  others: readonly { readonly patient: number; readonly input: HandoffInput }[] = [],
): object {
  const { startedAt, entries } = input;
  return {
    schema: 'fieldsay-record/1',
    ...(file === null ? {} : { file }),
    startedAt,
    entries: entries.map(byContract),
    coverage: input.coverage,
    scores: input.scores,
    flags: input.flags,
    handoff: { soap: textOf(soap(input)), mist: textOf(mist(input)), radio: radioTexts(input) },
    ...(others.length === 0
      ? {}
      : { others: others.map((other) => ({ patient: other.patient, ...recordJson(other.input, null) })) }),
  };
}

/** How much more there is than the short radio report, in one line. */
export const furtherDetails = (input: HandoffInput): string =>
  `${radioDetails(input).chunks.length} further pieces of details on request`;

/** The radio report, a text for each chunk. */
export const radioTexts = (input: HandoffInput): readonly string[] =>
  radio(input).chunks.map(({ text }) => text);
