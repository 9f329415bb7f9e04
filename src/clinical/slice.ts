// The standing entries cut into slices, so that a question is asked of the few entries that can answer it.

import { type Entry, stands } from '../record/entry.ts';
import type { Finding, Site, StatementKind, Topic, Vital } from '../terms/index.ts';
import { inOrder, withEntry } from './order.ts';

/** `found burn`: present burns; `denied burn`: denials of any burn of a whole site; `at knee`: findings, visits and limb checks of that very site. */
export type SliceName =
  | 'all'
  | StatementKind
  | `${'found' | 'denied'} ${Finding}`
  | 'found'
  | `at ${Site}`
  | `found at ${Site}`
  | `vital ${Vital}`
  | `history ${Topic}`;

export type Slices = ReadonlyMap<SliceName, readonly Entry[]>;

/** Words that take nothing away from a denial. */
const EVEN_SO: readonly string[] = ['active', 'fresh'];

/**
 * A denial that rules the finding out for its whole site. "No fracture", "no severe pain", "none at C5" and "not on the
 * far end" leave the finding itself, or the rest of the site, open.
 */
const deniesWhole = (entry: Extract<Entry, { kind: 'finding' }>): boolean =>
  entry.part === undefined &&
  entry.level === undefined &&
  entry.severity === undefined &&
  (entry.quality ?? []).every((word) => EVEN_SO.includes(word));

/** The slices that an entry belongs to; none where it was struck or replaced. */
function slicesOf(entry: Entry): readonly SliceName[] {
  if (!stands(entry)) return [];
  switch (entry.kind) {
    case 'finding':
      return entry.present
        ? ['all', 'finding', 'found', `found ${entry.finding}`, `at ${entry.site}`, `found at ${entry.site}`]
        : deniesWhole(entry)
          ? ['all', 'finding', `denied ${entry.finding}`, `at ${entry.site}`]
          : ['all', 'finding', `at ${entry.site}`];
    case 'csm':
    case 'visit':
      return ['all', entry.kind, `at ${entry.site}`];
    case 'vital':
      return ['all', 'vital', `vital ${entry.vital}`];
    case 'history':
      return ['all', 'history', `history ${entry.topic}`];
    default:
      return ['all', entry.kind];
  }
}

export interface Cut {
  /** as handed in, struck and replaced ones included */
  readonly entries: readonly Entry[];
  readonly slices: Slices;
}

function cut(entries: readonly Entry[]): Cut {
  const slices = new Map<SliceName, Entry[]>();
  for (const entry of inOrder(entries.filter(stands)))
    for (const name of slicesOf(entry)) {
      const slice = slices.get(name);
      if (slice === undefined) slices.set(name, [entry]);
      else slice.push(entry);
    }
  return { entries, slices };
}

export interface Recut extends Cut {
  /** the slices that are not as they were; null where all of them are to be taken as new */
  readonly changed: ReadonlySet<SliceName> | null;
}

/** More new entries than this, and cutting everything anew is the quicker way. */
const FEW = 24;

/**
 * The entries cut into slices. Given the cut before, slices without a new, altered or lost entry stay the same
 * objects. Entries are told apart by identity: an altered entry is a new object.
 */
export function cutAfter(before: Cut | null, entries: readonly Entry[]): Recut {
  if (before === null) return { ...cut(entries), changed: null };
  const gone: Entry[] = [];
  const come: Entry[] = [];
  const length = Math.max(before.entries.length, entries.length);
  for (let index = 0; index < length; index += 1) {
    const [old, fresh] = [before.entries[index], entries[index]];
    if (old === fresh) continue;
    if (old !== undefined) gone.push(old);
    if (fresh !== undefined) come.push(fresh);
    if (gone.length + come.length > FEW) return { ...cut(entries), changed: null };
  }
  const slices = new Map(before.slices);
  const changed = new Set<SliceName>();
  for (const entry of gone)
    for (const name of slicesOf(entry)) {
      slices.set(
        name,
        (slices.get(name) ?? []).filter((other) => other !== entry),
      );
      changed.add(name);
    }
  for (const entry of come)
    for (const name of slicesOf(entry)) {
      slices.set(name, withEntry(slices.get(name) ?? [], entry));
      changed.add(name);
    }
  return { entries, slices, changed };
}
