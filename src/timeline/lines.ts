// Every entry of the record is in a line, in the order it was true; one that no longer stands is shown as such.

import { type Entry, type EntryState, stands } from '../record/entry.ts';
import type { Unheard } from '../record/event.ts';
import { brief } from './brief.ts';
import { clock, type Day, dayOf } from './clock.ts';
import { type Folded, folded } from './folded.ts';
import { GAP_MINUTES, gaps } from './gaps.ts';
import { marksOf } from './marks.ts';
import { atOf, inOrder } from './order.ts';
import { perMembers } from './per-members.ts';
import { perThing } from './per-thing.ts';
import { series } from './series.ts';
import { unheardText } from './unheard.ts';

export interface TimelineInput {
  /** ISO 8601 with offset; its day is the one that is not written out */
  readonly startedAt: string;
  /** all of them, struck and replaced ones too, in the order spoken */
  readonly entries: readonly Entry[];
  /** stretches in which nothing could be heard */
  readonly unheard?: readonly Unheard[];
  /** silences longer than this are named; the default is `GAP_MINUTES` */
  readonly gapMinutes?: number;
}

export interface TimelineLine {
  /** ISO: when it was so; of a gap, when it began */
  readonly at: string;
  readonly text: string;
  /** the ids of the entries that the line shows, that of its words first; of a struck or replaced one too */
  readonly entries: readonly string[];
  readonly state: EntryState | 'gap';
}

/** What was said or typed may hold a line break; a line of the timeline may not. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

const briefOf = perThing(brief);

const lost = (entry: Entry, heir: Entry | undefined): string =>
  entry.state === 'struck'
    ? `STRUCK, does not stand: ${briefOf(entry)}`
    : `REPLACED, does not stand: ${briefOf(entry)}${heir === undefined ? '' : `; now: ${briefOf(heir)}`}`;

/** The words of a standing one, with when the same vital was taken before; not its value, so that a line holds one value only. */
function standingText(entry: Entry, earlier: Entry | undefined, day: Day): string {
  const before = earlier === undefined ? [] : [`last taken ${clock(earlier.at, day)}`];
  const marks = [...before, ...marksOf(entry, day)];
  return marks.length === 0 ? briefOf(entry) : `${briefOf(entry)} (${marks.join('; ')})`;
}

/** The reading of the same vital that came before each reading. */
function earlierReadings(entries: readonly Entry[]): ReadonlyMap<string, Entry> {
  const before = new Map<string, Entry>();
  for (const { readings } of series(entries)) {
    readings.forEach((reading, index) => {
      const earlier = readings[index - 1];
      if (earlier !== undefined) before.set(reading.id, earlier);
    });
  }
  return before;
}

/** The lines of an entry and of those that it tells besides, by what else they say. */
const linesOf = perMembers<Entry, Map<string, TimelineLine>>(() => new Map());

/** The line of an entry: the same object for as long as it says the same, so that whoever shows it needs not draw it anew. */
function lineOf(
  { entry, others }: Folded,
  earlier: Entry | undefined,
  heir: Entry | undefined,
  day: Day,
): TimelineLine {
  const known = linesOf([entry, ...others]);
  const key = [day, earlier?.at ?? '', heir === undefined ? '' : briefOf(heir)].join('|');
  const before = known.get(key);
  if (before !== undefined) return before;
  const line: TimelineLine = {
    at: entry.at,
    text: oneLine(stands(entry) ? standingText(entry, earlier, day) : lost(entry, heir)),
    entries: [entry.id, ...others.map(({ id }) => id)],
    state: entry.state,
  };
  known.set(key, line);
  return line;
}

/** Lines that stand by time, with others set between them; where two begin at once, the first list's comes first. */
function merged(said: readonly Timed[], others: readonly TimelineLine[]): readonly TimelineLine[] {
  const between = others
    .map((line): Timed => ({ line, at: Date.parse(line.at) }))
    .sort((one, other) => one.at - other.at);
  if (between.length === 0) return said.map(({ line }) => line);
  return [...said, ...between].sort((one, other) => one.at - other.at).map(({ line }) => line);
}

interface Timed {
  readonly line: TimelineLine;
  readonly at: number;
}

/** The record as lines by time, with the silences between them. */
export function timelineLines(input: TimelineInput): readonly TimelineLine[] {
  const day = dayOf(input.startedAt);
  const before = earlierReadings(input.entries);
  const heirs = new Map<string, Entry>();
  if (input.entries.some(({ replacedBy }) => replacedBy !== undefined))
    for (const entry of input.entries) heirs.set(entry.id, entry);
  const said = folded(inOrder(input.entries)).map((one): Timed => {
    const { id, replacedBy } = one.entry;
    const heir = replacedBy === undefined ? undefined : heirs.get(replacedBy);
    return { line: lineOf(one, before.get(id), heir, day), at: atOf(one.entry) };
  });
  const silent = gaps(input.entries, input.gapMinutes ?? GAP_MINUTES).map(
    (gap): TimelineLine => ({
      at: gap.from,
      text: `Nothing heard for ${gap.minutes} minutes, until ${clock(gap.to, day)}`,
      entries: [],
      state: 'gap',
    }),
  );
  const deaf = (input.unheard ?? []).map(
    (stretch): TimelineLine => ({
      at: stretch.from,
      text: oneLine(unheardText(stretch, day)),
      entries: [],
      state: 'gap',
    }),
  );
  // A gap comes after what was so at the moment it began.
  return merged(said, [...silent, ...deaf]);
}
