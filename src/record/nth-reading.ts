// "Correction, first pulse was eighty": of the readings of a sign only the one that is named can be put right.

import type { CorrectionFrame, Nth } from '../parse/frame.ts';
import type { Effect } from './effect.ts';
import { type Entry, stands } from './entry.ts';
import type { RecordState } from './state.ts';
import { groupsThatFit } from './target.ts';

type Reading = Extract<Entry, { readonly kind: 'vital' }>;

/** What of the record such a correction may mean, or the words to be kept where that cannot be told. */
export function ofNthReading(
  state: RecordState,
  frame: CorrectionFrame,
  effectsOf: (state: RecordState, frame: CorrectionFrame) => readonly Effect[],
): readonly Effect[] {
  const { nth, change } = frame;
  if (nth === undefined) return effectsOf(state, frame);
  const vital = frame.target.vital ?? (change.change === 'statement' ? null : vitalOfLast(state));
  const readings = readingsOf(state, vital);
  const meant = chosen(readings, nth);
  if (vital === null || vital === undefined) return effectsOf(state, frame);
  if (readings.length > 0 && meant === undefined) return [{ effect: 'keep', why: WHICH }];
  const entries = state.entries.filter((entry) => entry === meant || !readings.some((one) => one === entry));
  const target = { ...frame.target, kind: 'vital' as const, vital };
  return effectsOf({ ...state, entries }, { ...frame, target });
}

const WHICH = 'Which of the readings is it that was put right?';

function vitalOfLast(state: RecordState): Reading['vital'] | null {
  const last = groupsThatFit(state, {})[0]?.entries.at(-1);
  return last?.kind === 'vital' ? last.vital : null;
}

/** The standing readings of a sign, the earliest first. */
const readingsOf = (state: RecordState, vital: Reading['vital'] | null | undefined): readonly Reading[] =>
  state.entries
    .filter((entry): entry is Reading => entry.kind === 'vital' && entry.vital === vital && stands(entry))
    .toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at));

// Of three readings the last one is not meant by "earlier", and which of the others nobody can tell.
function chosen(readings: readonly Reading[], nth: Nth): Reading | undefined {
  if (nth === 'earlier') return readings.length <= 2 ? readings[0] : undefined;
  return readings[nth - 1];
}
