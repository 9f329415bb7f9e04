// State is a fold of events: each step gives a new state and never alters the old one.

import { type Entry, stands } from './entry.ts';
import type { EnteredEntry, RecordEvent } from './event.ts';
import { refile } from './filing.ts';
import { EMPTY, type Group, type RecordState } from './state.ts';

/** The state after one more event. An event that names an entry the log lacks (a cut log) changes what it can. */
export function step(state: RecordState, event: RecordEvent): RecordState {
  const before = state.lastSeq[event.device] ?? 0;
  // The same event may come twice (two devices that exchanged logs); one with a new number cannot have.
  const isNew = event.seq > before;
  const next = happen(state, event, isNew);
  const last = Math.max(event.seq, before);
  return { ...next, lastSeq: { ...next.lastSeq, [event.device]: last } };
}

/** The state after all the events, on top of an earlier state where one is given. */
export const fold = (events: readonly RecordEvent[], from: RecordState = EMPTY): RecordState =>
  events.reduce(step, from);

function happen(state: RecordState, event: RecordEvent, isNew: boolean): RecordState {
  switch (event.kind) {
    case 'started':
      return { ...state, startedAt: event.payload.startedAt, zone: event.payload.zone };
    case 'utterance':
      return isNew || !state.utterances.some(({ id }) => id === event.id)
        ? { ...state, utterances: [...state.utterances, { ...event.payload, id: event.id }] }
        : state;
    case 'unheard':
      return { ...state, unheard: [...state.unheard, event.payload] };
    case 'entered':
      return enter(state, [event.payload], isNew);
    case 'corrected': {
      const [first] = event.payload.replacements;
      const replaced = alter(state, event.payload.targets, (entry) => ({
        ...entry,
        state: 'replaced',
        ...(first === undefined ? {} : { replacedBy: first.id }),
      }));
      return enter(replaced, event.payload.replacements, isNew);
    }
    case 'struck':
      return {
        ...alter(state, event.payload.entries, (entry) => ({ ...entry, state: 'struck' })),
        lastStruck: event.payload.entries,
      };
    case 'restored':
      return { ...restore(state, event.payload.entries), lastStruck: [] };
    case 'confirmed':
      return alter(state, event.payload.entries, confirm);
    case 'command':
      return state;
    case 'problems':
      return { ...state, problemChanges: [...state.problemChanges, event.payload.change] };
    case 'handed-over':
      return isNew || !state.handover.some(({ id }) => id === event.id)
        ? { ...state, handover: [...state.handover, { ...event.payload, id: event.id, at: event.time }] }
        : state;
    case 'filed':
      return { ...state, filing: refile(state.filing, event.payload) };
    case 'unmatched-correction': {
      const { heard, why } = event.payload;
      return { ...state, unmatched: [...state.unmatched, { heard, why }] };
    }
  }
}

/** Confirming is a person's word that the entry is right, so what was in doubt is settled. */
function confirm(entry: Entry): Entry {
  const { doubt: _settled, ...rest } = entry;
  return { ...rest, state: 'confirmed' };
}

/** What was struck or replaced stays so: only standing entries change. */
function alter(state: RecordState, ids: readonly string[], change: (entry: Entry) => Entry): RecordState {
  const entries = [...state.entries];
  for (const id of ids) {
    const index = entries.findLastIndex((entry) => entry.id === id);
    const entry = entries[index];
    if (entry !== undefined && stands(entry)) entries[index] = change(entry);
  }
  return { ...state, entries };
}

/** Only what was struck can be restored; it is to be confirmed again, whatever it was before. */
function restore(state: RecordState, ids: readonly string[]): RecordState {
  const entries = state.entries.map(
    (entry): Entry =>
      ids.includes(entry.id) && entry.state === 'struck' ? { ...entry, state: 'heard' } : entry,
  );
  return { ...state, entries };
}

function enter(state: RecordState, entered: readonly EnteredEntry[], isNew: boolean): RecordState {
  const entries = [...state.entries];
  const groups = [...state.groups];
  for (const one of entered) {
    if (!isNew && entries.some((entry) => entry.id === one.id)) continue;
    entries.push(asEntry(one));
    join(groups, one);
  }
  return { ...state, entries, groups };
}

function join(groups: Group[], { id, group, utterance }: EnteredEntry): void {
  const index = groups.findLastIndex((known) => known.id === group);
  const known = groups[index];
  if (known === undefined) groups.push({ id: group, utterance, entries: [id] });
  else groups[index] = { ...known, entries: [...known.entries, id] };
}

function asEntry({ id, statement, at, heardAt, heard, known, doubt }: EnteredEntry): Entry {
  return {
    id,
    ...statement,
    at,
    heardAt,
    heard,
    state: 'heard',
    ...(Object.keys(known).length > 0 ? { known } : {}),
    ...(doubt.length > 0 ? { doubt } : {}),
  };
}
