// Whether the page says aloud that vitals are due, and how often they are: both as a person chose them on this device.

import type { DueOptions } from '../../clinical/index.ts';

export const REMINDERS = ['off', 'on'] as const;
export type Reminder = (typeof REMINDERS)[number];
export const REMINDER_NAMES: Readonly<Record<Reminder, string>> = { off: 'Off', on: 'On' };

export const PACES = ['close', 'usual', 'wide'] as const;
export type VitalsPace = (typeof PACES)[number];

/** Minutes between sets, unstable and stable: 5 and 15 are common practice (no source), the others are a person's choice. */
export const MINUTES: Readonly<
  Record<VitalsPace, Required<Pick<DueOptions, 'unstableMinutes' | 'stableMinutes'>>>
> = {
  close: { unstableMinutes: 3, stableMinutes: 10 },
  usual: { unstableMinutes: 5, stableMinutes: 15 },
  wide: { unstableMinutes: 10, stableMinutes: 30 },
};

export const PACE_NAMES: Readonly<Record<VitalsPace, string>> = {
  close: '3 or 10 min',
  usual: '5 or 15 min',
  wide: '10 or 30 min',
};
