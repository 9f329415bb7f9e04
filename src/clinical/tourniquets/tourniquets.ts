// Promises each tourniquet from when it was on, with what was said of its being taken off, and drops none.

import { type Entry, firstTold } from '../../record/entry.ts';
import { isWithin } from '../place.ts';
import { type RemovedFrom, removalIn, removedFrom, saysRestOff } from './removal-words.ts';

type CareEntry = Extract<Entry, { kind: 'care' }>;
type NoteEntry = Extract<Entry, { kind: 'note' }>;

/** `off`: this one was taken off; `which`: one was, perhaps this; `whether`: it may be off, or hold still. */
export interface SaidOff {
  readonly note: NoteEntry;
  readonly how: 'off' | 'which' | 'whether';
}

export interface Tourniquet {
  /** all that told of it, the earliest time first of those with a place; never empty */
  readonly entries: readonly [CareEntry, ...CareEntry[]];
  /** what was said against its being on, in the order said */
  readonly saidOff: readonly SaidOff[];
}

interface Open {
  place: string;
  entries: [CareEntry, ...CareEntry[]];
  readonly saidOff: SaidOff[];
}

const SAID: Readonly<Record<SaidOff['how'], (time: string) => string>> = {
  off: (time) => `said off at ${time}`,
  which: (time) => `said at ${time}, not clear of which`,
  whether: (time) => `said at ${time}, not clear whether it is off`,
};

/** The words in quotation marks, without what ends them. */
export const quotedWords = (text: string): string => `“${text.trim().replace(/[\s.,;:]+$/, '')}”`;

/** `said off at 09:15: “tourniquet off”`; `time` as the report writes the note's. */
export const saidOffWords = ({ note, how }: SaidOff, time: string): string =>
  `${SAID[how](time)}: ${quotedWords(note.text)}`;

/** What was surely said of this one; null where it is on for all that is known. */
export const offOf = ({ saidOff }: Tourniquet): NoteEntry | null =>
  saidOff.find(({ how }) => how === 'off')?.note ?? null;

const isOff = ({ saidOff }: Open): boolean => saidOff.some(({ how }) => how === 'off');

const placeOf = ({ site, side }: CareEntry): string => `${site}|${side}`;
const minute = ({ at }: Entry): number => Math.floor(Date.parse(at) / 60_000);
const isSameMinute = (one: Entry, other: Entry): boolean => minute(one) === minute(other);

/** "Tourniquet time was thirteen fifty one" tells of the one that went on then, without its place. */
const isToldWithout = ({ entries: [first] }: Open, entry: CareEntry): boolean =>
  (first.site === undefined) !== (entry.site === undefined) && isSameMinute(first, entry);

function join(open: Open, applied: readonly CareEntry[], entry: CareEntry): void {
  const all = applied.filter((one) => one === entry || open.entries.includes(one));
  const [first, ...others] = [
    ...all.filter(({ site }) => site !== undefined),
    ...all.filter(({ site }) => site === undefined),
  ];
  if (first === undefined) return;
  open.entries = [first, ...others];
  open.place = placeOf(first);
}

/** True where a tourniquet may be the one that these words name. */
function mayBe({ entries: [{ site, side = null }] }: Open, from: RemovedFrom): boolean {
  const sites =
    from.site === null || site === undefined || isWithin(site, from.site) || isWithin(from.site, site);
  return sites && (from.side === null || side === null || side === 'both' || side === from.side);
}

/** The words take off a single tourniquet of those that are on both sides. */
const isHalf = ({ entries: [{ side }] }: Open, from: RemovedFrom): boolean => side === 'both' && !from.all;

function takeOff(on: readonly Open[], note: NoteEntry, how: 'off' | 'whether'): void {
  const from = removedFrom(note.text);
  const open = on.filter((one) => !isOff(one));
  const fit = open.filter((one) => mayBe(one, from));
  if (fit.length === 0) {
    // One that was said off before was said so again; any other is not known.
    if (on.some((one) => isOff(one) && mayBe(one, from))) return;
    for (const one of open) one.saidOff.push({ note, how: 'which' });
    return;
  }
  for (const one of fit) {
    // Without a place it may say again that another came off, which it did before.
    const isOnlyOne =
      fit.length === 1 &&
      !from.unclear &&
      (from.site !== null ||
        from.side !== null ||
        !on.some((other) => isOff(other) && other.place !== one.place));
    const isClear = (from.all || isOnlyOne) && !isHalf(one, from);
    one.saidOff.push({ note, how: isClear ? how : 'which' });
  }
}

/**
 * The tourniquets of a record, the earliest first. The same place said again is the same one, since a later word of it may
 * only repeat it; after something was said of its being off, another time is another tourniquet. Cares and notes are those
 * that stand, in the order of time; a moment counts from when it was said, for that is what the words speak of.
 */
export function tourniquetsOf(
  cares: readonly CareEntry[],
  notes: readonly NoteEntry[],
): readonly Tourniquet[] {
  const applied = cares.filter(({ care }) => care === 'tourniquet');
  if (applied.length === 0) return [];
  const on: Open[] = [];
  const put = (entry: CareEntry): void => {
    const own = on.findLast(({ place }) => place === placeOf(entry));
    const same =
      own?.saidOff.length === 0 || own?.entries.some((other) => isSameMinute(other, entry)) === true
        ? own
        : on.findLast((one) => isToldWithout(one, entry));
    if (same === undefined) on.push({ place: placeOf(entry), entries: [entry], saidOff: [] });
    else join(same, applied, entry);
  };
  const moments = new Map<number, { cares: CareEntry[]; notes: NoteEntry[] }>();
  const momentOf = (entry: Entry) => {
    const at = Date.parse(firstTold(entry));
    const moment = moments.get(at) ?? { cares: [], notes: [] };
    moments.set(at, moment);
    return moment;
  };
  for (const entry of applied) momentOf(entry).cares.push(entry);
  for (const note of notes) momentOf(note).notes.push(note);
  for (const [, moment] of [...moments].sort(([one], [other]) => one - other)) {
    const named = moment.notes.flatMap((note) => {
      const how = removalIn(note.text);
      return how === null ? [] : [{ note, how }];
    });
    // In one breath the old one comes off before another goes on; where none was on, what went on came off.
    const before = on.some((one) => !isOff(one));
    if (before) for (const { note, how } of named) takeOff(on, note, how);
    for (const entry of moment.cares) put(entry);
    if (!before) for (const { note, how } of named) takeOff(on, note, how);
    const rest = moment.notes.filter(({ text }) => removalIn(text) === null && saysRestOff(text));
    const [only, ...others] = new Set(moment.cares.map(placeOf));
    if (only === undefined) continue;
    const told = on.findLast(({ place }) => place === only);
    for (const note of rest) told?.saidOff.push({ note, how: others.length === 0 ? 'off' : 'which' });
  }
  return on
    .map(({ entries, saidOff }) => ({ entries, saidOff }))
    .sort((one, other) => applied.indexOf(one.entries[0]) - applied.indexOf(other.entries[0]));
}
