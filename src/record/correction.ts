// What a spoken correction does to the record: strikes, replaces, or, where it fits nothing, is kept as a note.

import type { CorrectionFrame } from '../parse/frame.ts';
import { alter } from './alteration.ts';
import { remainderOf } from './change/remainder.ts';
import { type Effect, leftOver, NO_FIT, type Said } from './effect.ts';
import { ofNthReading } from './nth-reading.ts';
import { withReadBacks } from './read-back.ts';
import { restate } from './restatement.ts';
import type { RecordState } from './state.ts';
import { statementOf } from './statement-of.ts';
import { groupsThatFit } from './target.ts';

/** The correction's effects on the record as it stands. */
export function correct(state: RecordState, frame: CorrectionFrame, said: Said): readonly Effect[] {
  const effects = ofNthReading(state, frame, (some, one) => effectsOf(some, one, said));
  return withReadBacks(state, effects);
}

function effectsOf(state: RecordState, frame: CorrectionFrame, said: Said): readonly Effect[] {
  const { change } = frame;
  if (change.change === 'strike') return strike(state, frame);
  if (change.change === 'statement') return restate(state, frame, change.statement, said);
  return alter(state, frame, change, said);
}

function strike(state: RecordState, frame: CorrectionFrame): readonly Effect[] {
  const [latest] = groupsThatFit(state, frame.target);
  if (latest === undefined) return NO_FIT;
  return latest.entries.map((entry) => {
    const rest = remainderOf(statementOf(entry), frame.target.side);
    return rest === null
      ? { effect: 'strike', targets: [entry.id] }
      : { effect: 'replace', targets: [entry.id], replacements: [leftOver(state, entry, rest)] };
  });
}
