// State is a fold of events: each step gives a new state and never alters the old one.

import { type Entry, firstTold, stands } from './entry.ts';
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
export function fold(events: readonly RecordEvent[], from: RecordState = EMPTY): RecordState {
  let state = from;
  let at = 0;
  while (at < events.length) {
    const run = plainRun(events, at, state);
    const [next] = events.slice(at, at + 1);
    if (run.length > 1) state = addRun(state, run);
    else if (next !== undefined) state = step(state, next);
    at += Math.max(1, run.length);
  }
  return state;
}

type Plain = Extract<RecordEvent, { readonly kind: 'utterance' | 'entered' }>;

/** The events from a place on that only add something, each new on its device. */
function plainRun(events: readonly RecordEvent[], from: number, { lastSeq }: RecordState): readonly Plain[] {
  const run: Plain[] = [];
  const last: Record<string, number> = { ...lastSeq };
  for (let at = from; at < events.length; at += 1) {
    const event = events[at];
    if (event === undefined || (event.kind !== 'utterance' && event.kind !== 'entered')) break;
    if (event.seq <= (last[event.device] ?? 0)) break;
    last[event.device] = event.seq;
    run.push(event);
  }
  return run;
}

/** What the single steps would give, with each list copied once and not for every event: a long log opens in time. */
function addRun(state: RecordState, run: readonly Plain[]): RecordState {
  const [entries, groups, utterances] = [[...state.entries], [...state.groups], [...state.utterances]];
  const lastSeq: Record<string, number> = { ...state.lastSeq };
  const places = new Map(groups.map(({ id }, index) => [id, index]));
  for (const event of run) {
    lastSeq[event.device] = event.seq;
    if (event.kind === 'utterance') {
      utterances.push({ ...event.payload, id: event.id });
      continue;
    }
    const { id, group, utterance } = event.payload;
    entries.push(asEntry(event.payload));
    const index = places.get(group);
    const known = index === undefined ? undefined : groups[index];
    if (index === undefined || known === undefined) {
      places.set(group, groups.length);
      groups.push({ id: group, utterance, entries: [id] });
    } else groups[index] = { ...known, entries: [...known.entries, id] };
  }
  return { ...state, entries, groups, utterances, lastSeq };
}

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
      return enter(replaced, event.payload.replacements, isNew, event.payload.targets);
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

function enter(
  state: RecordState,
  entered: readonly EnteredEntry[],
  isNew: boolean,
  corrected: readonly string[] = [],
): RecordState {
  const entries = [...state.entries];
  const groups = [...state.groups];
  const earlier = entries.filter(({ id }) => corrected.includes(id));
  for (const one of entered) {
    if (!isNew && entries.some((entry) => entry.id === one.id)) continue;
    entries.push(keepingFirstTold(asEntry(one), earlier));
    join(groups, one);
  }
  return { ...state, entries, groups };
}

/** A correction that keeps the time of what it corrects says nothing of when: the time was spoken then or not at all. */
function keepingFirstTold(entry: Entry, corrected: readonly Entry[]): Entry {
  const source = corrected.find(({ at }) => at === entry.at);
  const told = source === undefined ? entry.heardAt : firstTold(source);
  return told === entry.heardAt ? entry : { ...entry, firstHeardAt: told };
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
