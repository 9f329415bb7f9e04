// The timeline as text for a terminal: a line for each entry with its time in front, then the vitals as series.

import { clock, dayOf } from './clock.ts';
import { type TimelineInput, timelineLines } from './lines.ts';
import { series, seriesText } from './series.ts';

/** `14:06  RIGHT forearm: laceration 3 cm (unconfirmed)`, one line each, without a newline at the end. */
export function timelineText(input: TimelineInput): string {
  const day = dayOf(input.startedAt);
  const lines = timelineLines(input).map((line) => `${clock(line.at, day)}  ${line.text}`);
  const repeats = series(input.entries).filter(({ readings }) => readings.length > 1);
  const block = repeats.length === 0 ? [] : ['', 'Series', ...repeats.map((one) => seriesText(one, day))];
  return [...lines, ...block].join('\n');
}
