// What to say aloud about vitals that are due, and when: once as they fall due and again while they stay so, never before.

import type { Due } from './due.ts';
import type { VitalSet } from './sets.ts';

export interface Speaking {
  /** epoch ms */
  readonly now: number;
  /** epoch ms at which a reminder was last spoken; null where none was */
  readonly spokenAt: number | null;
  /** epoch ms at which the examination began: a first set falls due an interval later; without it, at once */
  readonly startedAt?: number;
  /** minutes until an unheeded reminder is said again; common practice, adjustable */
  readonly againMinutes?: number;
}

const AGAIN_MINUTES = 5;

const minutesText = (minutes: number): string => (minutes === 1 ? '1 minute' : `${minutes} minutes`);

/**
 * The reminder to speak at `now`, or null. A reminder spoken since the set fell due is held back for `againMinutes`. It
 * names what the last set held, since that is what there is to compare with; no value is said.
 */
export function spokenReminder(due: Due, sets: readonly VitalSet[], speaking: Speaking): string | null {
  const { now, spokenAt, startedAt, againMinutes = AGAIN_MINUTES } = speaking;
  const first = startedAt === undefined ? Number.NEGATIVE_INFINITY : startedAt + due.everyMinutes * 60_000;
  const from = due.dueAt ?? first;
  if (now < from) return null;
  const spokenSince = spokenAt !== null && spokenAt >= from;
  if (spokenSince && now - spokenAt < againMinutes * 60_000) return null;
  const last = sets.at(-1);
  if (last === undefined || due.dueAt === null) return 'No vitals yet. Take a first set.';
  const names = last.vitals.map((vital) => (vital === 'gcs' ? 'GCS' : vital.replaceAll('-', ' '))).join(', ');
  const since = Math.max(0, Math.floor((now - last.to) / 60_000));
  return `Vitals are due. Last taken ${minutesText(since)} ago: ${names}.`;
}
