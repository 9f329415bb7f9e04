// What each of the last utterances became: entries, corrections, strikes, commands, or nothing to record.

import { BY_HAND, type Entry, type RecordEvent, type RecordState } from '../../record/index.ts';
import { perThing } from '../../timeline/index.ts';

export type Outcome =
  | { readonly kind: 'entered'; readonly entry: Entry }
  | { readonly kind: 'corrected'; readonly was: readonly Entry[]; readonly now: readonly Entry[] }
  | { readonly kind: 'struck'; readonly entries: readonly Entry[] }
  | { readonly kind: 'restored'; readonly entries: readonly Entry[] }
  | { readonly kind: 'confirmed'; readonly entries: readonly Entry[] }
  | { readonly kind: 'command'; readonly command: string };

export interface Became {
  readonly id: string;
  readonly text: string;
  /** ISO 8601 with offset */
  readonly heardAt: string;
  readonly engine: string | null;
  readonly outcomes: readonly Outcome[];
}

/** The last `count` utterances, latest first, with their outcomes as the record stands now. */
export function lastSaid(
  events: readonly RecordEvent[],
  state: RecordState,
  count: number,
): readonly Became[] {
  const byId = entriesById(state.entries);
  const said: Became[] = [];
  let outcomes: Outcome[] = [];
  // From the end, and no further than needed: several views ask after each line of a long talk.
  for (let at = events.length - 1; at >= 0 && said.length < count; at -= 1) {
    const event = events[at];
    if (event === undefined) break;
    if (event.kind === 'utterance') {
      const { text, heardAt, engine } = event.payload;
      said.push({ id: event.id, text, heardAt, engine: engine ?? null, outcomes });
      outcomes = [];
    } else {
      const outcome = outcomeOf(event, byId);
      if (outcome !== null) outcomes = [outcome, ...outcomes];
    }
  }
  return said;
}

const entriesById = perThing(
  (entries: readonly Entry[]): ReadonlyMap<string, Entry> =>
    new Map(entries.map((entry) => [entry.id, entry])),
);

/** What one event says became of the words; null for what a hand did, which came of no words. */
function outcomeOf(event: RecordEvent, byId: ReadonlyMap<string, Entry>): Outcome | null {
  const found = (ids: readonly string[]): readonly Entry[] => ids.flatMap((id) => byId.get(id) ?? []);
  switch (event.kind) {
    case 'entered': {
      const entry = byId.get(event.payload.id);
      return entry === undefined ? null : { kind: 'entered', entry };
    }
    case 'corrected': {
      const { targets, replacements } = event.payload;
      if (replacements[0]?.utterance === null) return null;
      return { kind: 'corrected', was: found(targets), now: found(replacements.map(({ id }) => id)) };
    }
    case 'struck':
    case 'restored':
    case 'confirmed': {
      const { entries, by } = event.payload;
      return by === BY_HAND ? null : { kind: event.kind, entries: found(entries) };
    }
    case 'command':
      return { kind: 'command', command: event.payload.command };
    default:
      return null;
  }
}

/** The entries that an utterance gave, as they stand now. */
export const entriesOf = ({ outcomes }: Became): readonly Entry[] =>
  outcomes.flatMap((outcome) =>
    outcome.kind === 'entered' ? [outcome.entry] : outcome.kind === 'corrected' ? outcome.now : [],
  );
