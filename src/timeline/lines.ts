// Every entry of the record is in a line, in the order it was true; one that no longer stands is shown as such.

import type { Entry, EntryState } from '../record/entry.ts';
import type { Unheard } from '../record/event.ts';
import { brief } from './brief.ts';
import { clock, type Day, dayOf } from './clock.ts';
import { folded } from './folded.ts';
import { GAP_MINUTES, gaps } from './gaps.ts';
import { marksOf } from './marks.ts';
import { inOrder } from './order.ts';
import { perEntry } from './per-entry.ts';
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

const briefOf = perEntry(brief);

function lost(entry: Entry, byId: ReadonlyMap<string, Entry>): string {
  if (entry.state === 'struck') return `STRUCK, does not stand: ${briefOf(entry)}`;
  const heir = entry.replacedBy === undefined ? undefined : byId.get(entry.replacedBy);
  return `REPLACED, does not stand: ${briefOf(entry)}${heir === undefined ? '' : `; now: ${briefOf(heir)}`}`;
}

/** When the same vital was taken before; not its value, so that a line holds one value only. */
const repeat = (entry: Entry, before: ReadonlyMap<string, Entry>, day: Day): readonly string[] => {
  const earlier = before.get(entry.id);
  return earlier === undefined ? [] : [`last taken ${clock(earlier.at, day)}`];
};

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

/** The record as lines by time, with the silences between them. */
export function timelineLines(input: TimelineInput): readonly TimelineLine[] {
  const day = dayOf(input.startedAt);
  const byId = new Map(input.entries.map((entry) => [entry.id, entry]));
  const before = earlierReadings(input.entries);
  const said = folded(inOrder(input.entries)).map(({ entry, others }): TimelineLine => {
    const standsNow = entry.state === 'heard' || entry.state === 'confirmed';
    const marks = standsNow ? [...repeat(entry, before, day), ...marksOf(entry, day)] : [];
    const text = standsNow ? briefOf(entry) : lost(entry, byId);
    return {
      at: entry.at,
      text: oneLine(marks.length === 0 ? text : `${text} (${marks.join('; ')})`),
      entries: [entry.id, ...others.map(({ id }) => id)],
      state: entry.state,
    };
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
  // The sort is stable: a gap comes after what was so at the moment it began.
  return [...said, ...silent, ...deaf]
    .map((line) => ({ line, at: Date.parse(line.at) }))
    .sort((one, other) => one.at - other.at)
    .map(({ line }) => line);
}
