// A look at a place, and the same thing said again within its minute, need no line of their own: they stand with the line
// that tells more. Nothing is dropped: the line names them.

import type { Entry } from '../record/entry.ts';
import { brief } from './brief.ts';
import { minuteOf } from './clock.ts';
import { marksOf } from './marks.ts';
import { atOf } from './order.ts';
import { perThing } from './per-thing.ts';

/** A look is told by what was found or done at that very place this many minutes around it; common practice, no source. */
const LOOK_MINUTES = 2;

const placeOf = (entry: Entry): string | null =>
  'site' in entry && entry.site !== undefined ? `${entry.site}|${entry.side ?? ''}` : null;

const tellsOfPlace = (entry: Entry): boolean => entry.kind === 'finding' || entry.kind === 'csm';

const apart = (one: Entry, other: Entry): number => Math.abs(atOf(one) - atOf(other)) / 60_000;

/** Alike in words, marks and minute. */
const key = perThing((entry: Entry) =>
  [
    entry.kind,
    entry.state,
    minuteOf(entry.at),
    minuteOf(entry.heardAt),
    brief(entry),
    marksOf(entry, '').join(),
  ].join('|'),
);

/** The line that a look stands with: of what was found or denied at that very place, the next, or else the last before. */
function tellerOfLook(look: Entry, atPlace: readonly Entry[]): Entry {
  if ((look.doubt ?? []).length > 0) return look;
  const near = atPlace.filter((other) => other.state === look.state && apart(look, other) <= LOOK_MINUTES);
  return near.find((other) => atOf(other) >= atOf(look)) ?? near.at(-1) ?? look;
}

/** The first of each set of entries that are alike. */
function firstTwins(entries: readonly Entry[]): ReadonlyMap<Entry, Entry> {
  const firsts = new Map<string, Entry>();
  return new Map(
    entries.map((entry) => {
      const alike = key(entry);
      const first = firsts.get(alike) ?? entry;
      firsts.set(alike, first);
      return [entry, first];
    }),
  );
}

export interface Folded {
  /** the entry whose words the line has */
  readonly entry: Entry;
  /** the entries that it tells besides, in order */
  readonly others: readonly Entry[];
}

/** The standing entries, each in one place; those that no longer stand keep a line of their own. In the order given. */
export function folded(entries: readonly Entry[]): readonly Folded[] {
  const standing = entries.filter(({ state }) => state === 'heard' || state === 'confirmed');
  const twins = firstTwins(standing);
  const places = new Map<string | null, Entry[]>();
  for (const entry of standing.filter(tellsOfPlace)) {
    const place = placeOf(entry);
    const there = places.get(place);
    if (there === undefined) places.set(place, [entry]);
    else there.push(entry);
  }
  // What tells a look may itself be told by its first twin.
  const last = (entry: Entry): Entry => {
    const teller = entry.kind === 'visit' ? tellerOfLook(entry, places.get(placeOf(entry)) ?? []) : entry;
    return twins.get(teller) ?? teller;
  };
  const others = new Map<Entry, Entry[]>();
  for (const entry of standing) {
    const teller = last(entry);
    if (teller !== entry) others.set(teller, [...(others.get(teller) ?? []), entry]);
  }
  return entries
    .filter((entry) => last(entry) === entry)
    .map((entry) => ({ entry, others: others.get(entry) ?? [] }));
}
