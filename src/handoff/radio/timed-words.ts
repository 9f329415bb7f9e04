// What was told with its time says that time once, as a clock time: "ten minutes ago" is no longer true on the air.

import type { Day } from '../../timeline/index.ts';
import { type HistoryEntry, spokenTime, told } from '../sentences/history.ts';

const NUMBER =
  '(?:\\d+|an?|half an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty)';
const AGO = new RegExp(
  `,?\\s+(?:(?:about|around|some|maybe) )*${NUMBER}(?:[ -]${NUMBER})? (?:minute|hour)s? ago\\.?$`,
  'i',
);
const HOUR =
  '(?:oh|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|hundred|hours|half|quarter|past|to|\\d{1,2}:?\\d{0,2})';
const CLOCK = new RegExp(
  `,?\\s+at (?:about |around )?${HOUR}(?:[ -]${HOUR}){0,4}(?: (?:o'clock|[ap]\\.?m))?\\.?$`,
  'i',
);

/** `stung by a wasp`, said of fifteen minutes ago. */
export const withoutAgo = (text: string): string => text.replace(AGO, '');

/** `he collapsed, at 13:30`; as told where no time was spoken with it. */
export function timedWords(entry: HistoryEntry, day: Day): string {
  const time = spokenTime(entry, day);
  return time === '' ? told(entry) : `${withoutAgo(told(entry)).replace(CLOCK, '')}${time}`;
}
