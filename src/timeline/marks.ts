// What a reader must know before relying on an entry: not confirmed, not spoken but carried or inferred, in doubt.

import type { Entry } from '../record/entry.ts';
import { clock, type Day, isSameMinute } from './clock.ts';

const SLOT_NAMES: Readonly<Record<string, string>> = { present: 'yes or no', at: 'time' };

/** `side carried`, `yes or no inferred`: each slot that was not spoken. */
export const notSpoken = (entry: Entry): readonly string[] =>
  Object.entries(entry.known ?? {}).map(([slot, how]) => `${SLOT_NAMES[slot] ?? slot} ${how}`);

/** Everything to be marked on a standing entry, in plain words; empty where it was spoken and is confirmed. */
export const marksOf = (entry: Entry, day: Day): readonly string[] => [
  ...(entry.state === 'heard' ? ['unconfirmed'] : []),
  ...notSpoken(entry),
  ...(isSameMinute(entry.at, entry.heardAt) ? [] : [`said at ${clock(entry.heardAt, day)}`]),
  ...(entry.doubt ?? []).map((doubt) => `to settle: ${doubt}`),
];
