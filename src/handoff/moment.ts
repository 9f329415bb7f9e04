// The moment of the report, shown by the clock of the place where the examination began.

import { clock, dayOf } from '../timeline/index.ts';
import type { HandoffInput } from './input.ts';

const offsetMinutes = (iso: string): number => {
  const found = /([+-])(\d{2}):?(\d{2})$/.exec(iso);
  if (found === null) return 0;
  const minutes = Number(found[2]) * 60 + Number(found[3]);
  return found[1] === '-' ? -minutes : minutes;
};

/** A moment (milliseconds since the epoch) by the clock of the place; with its date where that is another day. */
export function clockThere(input: HandoffInput, moment: number): string {
  const there = new Date(moment + offsetMinutes(input.startedAt) * 60_000);
  return clock(there.toISOString(), dayOf(input.startedAt));
}

/** `14:40`, or with its date where that is not the day of the start. */
export const madeAt = (input: HandoffInput): string => clockThere(input, input.now);

/** `14:02` */
export const beganAt = (input: HandoffInput): string => clock(input.startedAt, dayOf(input.startedAt));
