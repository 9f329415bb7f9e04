// A correction of one slot: the latest group that has such a slot is meant, and its other slots are kept.

import type { CorrectionFrame } from '../parse/frame.ts';
import { tellsTime } from '../parse/times/index.ts';
import { regionOf, type Statement } from '../terms/index.ts';
import { applyChange, type SlotChange } from './change/change.ts';
import { denialOf, LIST_TOPICS } from './change/list-item.ts';
import { remainderOf } from './change/remainder.ts';
import { chosen } from './chosen.ts';
import { type Effect, leftOver, NO_FIT, type Said } from './effect.ts';
import { type Entry, firstTold } from './entry.ts';
import { isFarFrom } from './far-number.ts';
import { newDoubts, newKnown, wordsOf } from './provenance.ts';
import type { RecordState } from './state.ts';
import { statementOf } from './statement-of.ts';
import { type Candidates, groupsThatFit } from './target.ts';

/** The change on the latest group it makes sense for; one said before another utterance leaves a doubt. */
export function alter(
  state: RecordState,
  frame: CorrectionFrame,
  change: SlotChange,
  said: Said,
): readonly Effect[] {
  const groups = groupsThatFit(state, frame.target);
  for (const candidates of groups) {
    if (isLongGone(state, candidates, change, said)) continue;
    const isEarlier = change.change === 'number' && candidates !== groups[0];
    if (isEarlier && isFarFrom(candidates.entries, change.value)) continue;
    const effects = alterGroup(state, frame, change, said, candidates, groups[0]);
    if (effects.length > 0) return effects;
    if (change.change === 'number' && candidates === groups[0] && candidates.entries.some(isTimeTold))
      return NO_FIT;
  }
  return NO_FIT;
}

/** "No, sorry, left shin" after other talk means none of what was said of the face before it. */
function isLongGone(
  state: RecordState,
  { group, entries }: Candidates,
  change: SlotChange,
  { utterance }: Said,
): boolean {
  if (change.change !== 'site') return false;
  const between = state.groups
    .slice(state.groups.indexOf(group) + 1)
    .filter((one) => one.utterance !== utterance);
  const isElsewhere = entries.every(
    (one) => 'site' in one && one.site !== undefined && regionOf(one.site) !== regionOf(change.site),
  );
  return between.length > 0 && isElsewhere && between.some((one) => one.utterance !== group.utterance);
}

// "Last meal at ten. Correction, eleven ten": behind a time that was told, a number is of no sign said before it.
const isTimeTold = (entry: Entry): boolean =>
  entry.at !== firstTold(entry) || (entry.kind === 'history' && tellsTime(entry.text));

/** The effects on one group; none where the change makes no sense for any of it. */
function alterGroup(
  state: RecordState,
  frame: CorrectionFrame,
  change: SlotChange,
  said: Said,
  candidates: Candidates,
  latest: Candidates | undefined,
): readonly Effect[] {
  const effects: Effect[] = [];
  let same = false;
  for (const entry of chosen(candidates.entries, change)) {
    const outcome = applyChange(narrowed(entry, frame, change), change, wordsOf(state, entry));
    if (outcome.kind === 'senseless') continue;
    if (outcome.kind === 'impossible') return [{ effect: 'keep', why: outcome.why }];
    if (outcome.kind === 'same') {
      same = true;
      // Of a group with several numbers the last one was meant, and it says so already.
      if (change.change === 'number') break;
      continue;
    }
    const far = latest?.group.utterance !== candidates.group.utterance;
    const doubt = newDoubts(entry, outcome, [
      ...frame.doubt,
      ...(far ? [`taken to correct “${entry.heard}”`] : []),
    ]);
    const part = itemDenied(entry, change, frame.heard);
    const draft = {
      statement: part?.denied ?? outcome.statement,
      at: said.at ?? entry.at,
      heardAt: said.heardAt,
      heard: frame.heard,
      known: newKnown(entry, outcome, frame.known),
      doubt,
      utterance: said.utterance,
      group: said.group,
    };
    const rest =
      part?.rest ?? (change.change === 'side' ? null : remainderOf(statementOf(entry), frame.target.side));
    const replacements = rest === null ? [draft] : [draft, leftOver(state, entry, rest)];
    effects.push({ effect: 'replace', targets: [entry.id], replacements });
    if (change.change === 'number') break;
  }
  if (effects.length > 0) return effects;
  return same ? [{ effect: 'keep', why: 'the record says so already' }] : [];
}

/** What is denied of a told list and what stands of it, where the words name some of it; null for any other change. */
function itemDenied(
  entry: Entry,
  change: SlotChange,
  heard: string,
): { readonly denied: Statement; readonly rest: Statement } | null {
  if (change.change !== 'present' || change.present) return null;
  if (entry.kind !== 'history' || !LIST_TOPICS.has(entry.topic)) return null;
  const denial = denialOf(entry.text, heard);
  if (denial.kind !== 'part') return null;
  const { kind, topic } = entry;
  return {
    denied: { kind, topic, text: denial.denied, present: false },
    rest: { kind, topic, text: denial.rest },
  };
}

/** Where the correction names one side of what was said of both, the change is for that side. */
function narrowed(entry: Entry, frame: CorrectionFrame, change: SlotChange): Entry {
  const side = frame.target.side;
  if (change.change === 'side' || side === undefined) return entry;
  return 'side' in entry && entry.side === 'both' ? ({ ...entry, side } as Entry) : entry;
}
