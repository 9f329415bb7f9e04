// A stretch in which nothing could be heard, in one sentence that says how long and why.

import type { Unheard } from '../record/event.ts';
import { clock, type Day } from './clock.ts';

/** `NOT LISTENING for 40 s, until 14:06: the page was hidden`. */
export function unheardText({ from, to, why }: Unheard, day: Day): string {
  const seconds = Math.max(1, Math.round((Date.parse(to) - Date.parse(from)) / 1000));
  const long = seconds < 100 ? `${seconds} s` : `${Math.round(seconds / 60)} min`;
  return `NOT LISTENING for ${long}, until ${clock(to, day)}: ${why}`;
}
