// Vital signs on paper: a row for each minute in which any were taken, a column for each sign that has numbers.

import type { Vital } from '../../terms/index.ts';
import {
  clock,
  type Day,
  minuteOf,
  readingText,
  type Series,
  series,
  vitalName,
} from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { unspokenOf } from '../sentences/trust.ts';
import { type Cell, type PrintedTable, UNCONFIRMED_SIGN } from './findings.ts';

type Reading = Series['readings'][number];

/** In the order they stand on paper, with the words of the column. */
const NUMBERED: readonly (readonly [Vital, string])[] = [
  ['pulse', 'Pulse /min'],
  ['blood-pressure', 'Pressure mmHg'],
  ['respirations', 'Resp. /min'],
  ['oxygen-saturation', 'SpO2'],
  ['temperature', 'Temp.'],
  ['glucose', 'Glucose'],
  ['gcs', 'GCS'],
  ['pain-score', 'Pain'],
  ['capillary-refill', 'Cap. refill'],
  ['responsiveness', 'Response'],
  ['skin', 'Skin'],
  ['pupils', 'Pupils'],
];

const cellOf = (reading: Reading): Cell => {
  const unspoken = unspokenOf(reading);
  return {
    text: `${readingText(reading)}${reading.state === 'heard' ? ` ${UNCONFIRMED_SIGN}` : ''}${unspoken.length === 0 ? '' : ` (${unspoken.join('; ')})`}`,
    entries: [reading.id],
    weight: 'none',
  };
};

/** The table, or null where no sign was taken. */
export function signsTable({ entries }: HandoffInput, day: Day): PrintedTable | null {
  const all = series(entries);
  const columns = NUMBERED.filter(([vital]) => all.some((one) => one.vital === vital));
  if (columns.length === 0) return null;
  const readings = all.flatMap((one) => one.readings);
  const minutes = [...new Set(readings.map(({ at }) => minuteOf(at)))].sort((a, b) => a - b);
  return {
    title: 'Vital signs',
    columns: ['Time', ...columns.map(([, name]) => name)],
    rows: minutes.map((minute) => {
      const now = readings.filter(({ at }) => minuteOf(at) === minute);
      const time = now[0] === undefined ? '' : clock(now[0].at, day);
      return [
        [{ text: time, entries: [], weight: 'none' as const }],
        ...columns.map(([vital]) => now.filter((one) => one.vital === vital).map(cellOf)),
      ];
    }),
  };
}

export const signName = (vital: Vital): string =>
  NUMBERED.find(([one]) => one === vital)?.[1] ?? vitalName(vital);
