// A correction that says the whole statement anew: it replaces what it fits, or enters with a doubt.

import type { CorrectionFrame } from '../parse/frame.ts';
import type { Statement } from '../terms/index.ts';
import { denialOf, LIST_TOPICS } from './change/list-item.ts';
import { remainderOf } from './change/remainder.ts';
import { type Effect, leftOver, type Said } from './effect.ts';
import { type Entry, stands } from './entry.ts';
import { listedBefore } from './listed.ts';
import { leftBehind, movedWhole } from './moved.ts';
import { withOtherParts } from './other-parts.ts';
import { restated } from './restate.ts';
import type { EntryDraft } from './stamp.ts';
import type { RecordState } from './state.ts';
import { statementOf } from './statement-of.ts';
import { groupsThatFit } from './target.ts';
import { toldShorter } from './told-shorter.ts';

/** The statement in place of the earlier one that says the same; its time stays that of the earlier one. */
export function restate(
  state: RecordState,
  frame: CorrectionFrame,
  statement: Statement,
  said: Said,
): readonly Effect[] {
  const kept = keepingPlace(state, frame, statement, said);
  if (kept.length > 0) return kept;
  const listed = listedBefore(state, frame, said);
  const { entries, guessed } = restated(state, statement, frame.target, said, listed);
  const [latest] = entries;
  const draft = {
    statement: movedWhole(withOtherParts(statement, latest), latest),
    at: said.at ?? latest?.at ?? said.heardAt,
    heardAt: said.heardAt,
    heard: frame.heard,
    known: frame.known,
    utterance: said.utterance,
    group: said.group,
  };
  const [beside] = listed.filter(({ kind }) => kind === statement.kind);
  if (latest === undefined && beside !== undefined) {
    // Its words put the first of them in the place of something, and the others stand with that.
    const targets = state.entries.filter(({ replacedBy }) => replacedBy === beside.id).map(({ id }) => id);
    const { known, doubt } = frame;
    return [
      { effect: 'replace', targets, replacements: [{ ...draft, at: said.at ?? beside.at, known, doubt }] },
    ];
  }
  if (latest === undefined) {
    const doubt = [...frame.doubt, 'nothing earlier fits this correction'];
    return [{ effect: 'enter', draft: { ...draft, doubt } }];
  }
  const denied = deniesOfList(state, latest, draft, frame);
  if (denied !== null) return denied;
  const shorter = toldShorter(latest, draft.statement, said.at !== undefined);
  const doubt = [
    ...frame.doubt,
    ...(guessed ? [`taken to replace “${latest.heard}”`] : []),
    ...(shorter?.doubt ?? []),
    ...leftBehind(state, statement, entries, said.utterance),
  ];
  const side = 'side' in statement ? statement.side : null;
  const rests = entries.flatMap((entry) => {
    const rest = remainderOf(statementOf(entry), side);
    return rest === null ? [] : [leftOver(state, entry, rest)];
  });
  const targets = entries.map((entry) => entry.id);
  const anew = shorter === null ? draft : { ...draft, statement: shorter.statement };
  return [{ effect: 'replace', targets, replacements: [{ ...anew, doubt }, ...rests] }];
}

/** A denial of what a list names takes back that and no more; of what it does not name it takes back nothing, and is asked about. */
function deniesOfList(
  state: RecordState,
  entry: Entry,
  draft: Omit<EntryDraft, 'doubt'>,
  { doubt }: CorrectionFrame,
): readonly Effect[] | null {
  const { statement } = draft;
  if (statement.kind !== 'history' || statement.present !== false || !LIST_TOPICS.has(statement.topic))
    return null;
  if (entry.kind !== 'history' || entry.present === false) return null;
  const denial = denialOf(entry.text, statement.text);
  if (denial.kind === 'whole') return null;
  if (denial.kind === 'other') {
    const question = `“${entry.heard}” was told and stands: is it denied too?`;
    return [{ effect: 'enter', draft: { ...draft, at: draft.heardAt, doubt: [...doubt, question] } }];
  }
  const { kind, topic } = entry;
  const rest = leftOver(state, entry, { kind, topic, text: denial.rest });
  return [{ effect: 'replace', targets: [entry.id], replacements: [{ ...draft, doubt }, rest] }];
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
    const { heard, known } = frame;
    // "Tourniquet time thirteen fifty", of two that are on: the last one told is taken, and asked about.
    const others = state.entries.filter(
      (one) => one.kind === 'care' && one.care === entry.care && stands(one) && one.id !== entry.id,
    );
    const doubt = others.length > 0 ? [...frame.doubt, `taken to correct “${entry.heard}”`] : frame.doubt;
    const anew = { ...statementOf(entry), ...statement };
    const draft = { statement: anew, at, heardAt, heard, known, doubt, utterance, group };
    return [{ effect: 'replace', targets: [entry.id], replacements: [draft] }];
  });
}
