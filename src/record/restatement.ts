// A correction that says the whole statement anew: it replaces what it fits, or enters with a doubt.

import type { CorrectionFrame } from '../parse/frame.ts';
import type { Statement } from '../terms/index.ts';
import { remainderOf } from './change/remainder.ts';
import { type Effect, leftOver, type Said } from './effect.ts';
import { restated } from './restate.ts';
import type { RecordState } from './state.ts';
import { statementOf } from './statement-of.ts';
import { groupsThatFit } from './target.ts';

/** The statement in place of the earlier one that says the same; its time stays that of the earlier one. */
export function restate(
  state: RecordState,
  frame: CorrectionFrame,
  statement: Statement,
  said: Said,
): readonly Effect[] {
  const kept = keepingPlace(state, frame, statement, said);
  if (kept.length > 0) return kept;
  const { entries, guessed } = restated(state, statement, frame.target, said);
  const [latest] = entries;
  const draft = {
    statement,
    at: said.at ?? latest?.at ?? said.heardAt,
    heardAt: said.heardAt,
    heard: frame.heard,
    known: frame.known,
    utterance: said.utterance,
    group: said.group,
  };
  if (latest === undefined) {
    const doubt = [...frame.doubt, 'nothing earlier fits this correction'];
    return [{ effect: 'enter', draft: { ...draft, doubt } }];
  }
  const doubt = guessed ? [...frame.doubt, `taken to replace “${latest.heard}”`] : frame.doubt;
  const side = 'side' in statement ? statement.side : null;
  const rests = entries.flatMap((entry) => {
    const rest = remainderOf(statementOf(entry), side);
    return rest === null ? [] : [leftOver(state, entry, rest)];
  });
  const targets = entries.map((entry) => entry.id);
  return [{ effect: 'replace', targets, replacements: [{ ...draft, doubt }, ...rests] }];
}

// "Tourniquet on the right thigh at ten past. Correction, tourniquet at twenty past": where no place is said anew, the one that was said stays.
function keepingPlace(
  state: RecordState,
  frame: CorrectionFrame,
  statement: Statement,
  said: Said,
): readonly Effect[] {
  if (statement.kind !== 'care' || statement.site !== undefined) return [];
  const [latest] = groupsThatFit(state, frame.target);
  return (latest?.entries ?? []).flatMap((entry): readonly Effect[] => {
    if (entry.kind !== 'care' || entry.care !== statement.care || entry.site === undefined) return [];
    const { heardAt, at = entry.at, utterance, group } = said;
    const { heard, doubt, known } = frame;
    const anew = { ...statementOf(entry), ...statement };
    const draft = { statement: anew, at, heardAt, heard, known, doubt, utterance, group };
    return [{ effect: 'replace', targets: [entry.id], replacements: [draft] }];
  });
}
