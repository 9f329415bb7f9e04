// The readings of one vital stand together in the order they were true, each with its time and its entry.

import { type Entry, standing } from '../record/entry.ts';
import { VITALS, type Vital } from '../terms/index.ts';
import { clock, type Day, minuteOf } from './clock.ts';
import { vitalName } from './names.ts';
import { inOrder } from './order.ts';
import { readingText } from './reading.ts';

export type VitalEntry = Extract<Entry, { kind: 'vital' }>;

export interface Series {
  readonly vital: Vital;
  /** standing readings only, earliest first; never empty */
  readonly readings: readonly VitalEntry[];
}

/** One series for each vital that has a standing reading, in the order of the record's list of vitals. */
export function series(entries: readonly Entry[]): readonly Series[] {
  const readings = standing(inOrder(entries), 'vital');
  return VITALS.map((vital) => ({
    vital,
    readings: readings.filter((reading) => reading.vital === vital),
  })).filter((one) => one.readings.length > 0);
}

/** The readings without one that says the same again within its minute. */
const apart = (readings: Series['readings']): Series['readings'] =>
  readings.filter((reading, index) => {
    const before = readings[index - 1];
    return (
      before === undefined ||
      before.state !== reading.state ||
      minuteOf(before.at) !== minuteOf(reading.at) ||
      readingText(before) !== readingText(reading)
    );
  });

/** `Pulse: 14:06 92, 14:20 112 (unconfirmed)`; an unconfirmed reading is marked. */
export const seriesText = ({ vital, readings }: Series, day: Day): string =>
  `${vitalName(vital)}: ${apart(readings)
    .map(
      (entry) =>
        `${clock(entry.at, day)} ${readingText(entry)}${entry.state === 'heard' ? ' (unconfirmed)' : ''}`,
    )
    .join('; ')}`;
