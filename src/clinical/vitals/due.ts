// When the next set of vitals is due; a patient not known to be stable is treated as one who is not.

import { type Reckoned, reckoned } from '../evidence.ts';
import { COMMON_PRACTICE } from '../source.ts';
import type { VitalSet } from './sets.ts';

export type Stability = 'stable' | 'unstable' | 'unknown';

export interface DueOptions {
  /** minutes between sets; common practice 5 where unstable and 15 where stable */
  readonly unstableMinutes?: number;
  readonly stableMinutes?: number;
  /** the responder's own view, which then counts instead of what was worked out */
  readonly regard?: 'stable' | 'unstable';
}

export interface Due extends Reckoned {
  readonly stability: Stability;
  readonly everyMinutes: number;
  /** epoch ms; null before the first set */
  readonly dueAt: number | null;
  /** whole minutes overdue, 0 where not yet due */
  readonly overdueMinutes: number;
  /** what to say aloud; null where nothing is due yet */
  readonly reminder: string | null;
}

const minutesText = (minutes: number): string => (minutes === 1 ? '1 minute' : `${minutes} minutes`);

/** The next set: `every` minutes after the last reading of the last set. Before the first it is due now. */
export function dueOf(
  sets: readonly VitalSet[],
  worked: Stability,
  now: number,
  options: DueOptions = {},
): Due {
  const stability = options.regard ?? worked;
  const everyMinutes =
    stability === 'stable' ? (options.stableMinutes ?? 15) : (options.unstableMinutes ?? 5);
  const last = sets.at(-1);
  if (last === undefined)
    return {
      ...reckoned([], COMMON_PRACTICE, ['a first set of vitals']),
      stability,
      everyMinutes,
      dueAt: null,
      overdueMinutes: 0,
      reminder: 'No vitals yet.',
    };
  const dueAt = last.to + everyMinutes * 60_000;
  const overdueMinutes = Math.max(0, Math.floor((now - dueAt) / 60_000));
  const since = Math.floor((now - last.to) / 60_000);
  return {
    ...reckoned(
      last.entries,
      COMMON_PRACTICE,
      stability === 'unknown' ? ['whether the patient is stable'] : [],
    ),
    stability,
    everyMinutes,
    dueAt,
    overdueMinutes,
    reminder: now >= dueAt ? `Vitals are due: last taken ${minutesText(since)} ago.` : null,
  };
}
