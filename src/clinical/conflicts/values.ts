// Values that are unlikely as they stand: far from the last, two at once, a unit mistaken, a sum that does not add up.

import { firstTold } from '../../record/entry.ts';
import { type Chart, clockText, timeOf, vitalsOf } from '../chart.ts';
import { gcsSum } from '../score/gcs.ts';
import { type Measure, type Point, pointsOf, UNIT } from '../vitals/measures.ts';
import { type Conflict, conflictOf } from './conflict.ts';

/** Changes that are rather misheard than true within WITHIN_MINUTES; common practice, no source. */
const FAR: Readonly<Partial<Record<Measure, number>>> = {
  pulse: 50,
  respirations: 16,
  systolic: 50,
  diastolic: 40,
  'oxygen-saturation': 12,
  temperature: 2,
  glucose: 150,
  gcs: 5,
};
const WITHIN_MINUTES = 15;

const shown = (point: Point): string => `${point.value} ${UNIT[point.measure]}`.trim();

/** Each reading of a measure against the one before it, and against another of the same moment. */
export function jumps(chart: Chart, measure: Measure): readonly Conflict[] {
  const points = pointsOf(chart, measure);
  return points.flatMap((point, index): readonly Conflict[] => {
    const before = points[index - 1];
    if (before === undefined || before.entry.id === point.entry.id) return [];
    const name = point.measure.replaceAll('-', ' ');
    if (before.at === point.at && before.value !== point.value)
      return [
        conflictOf(
          'two-values-at-once',
          `${name}: ${shown(before)} and ${shown(point)} both at ${clockText(point.entry)}. Which holds?`,
          [before.entry, point.entry],
        ),
      ];
    const limit = FAR[point.measure];
    const near = point.at - before.at <= WITHIN_MINUTES * 60_000;
    if (limit === undefined || !near || Math.abs(point.value - before.value) < limit) return [];
    return [
      conflictOf(
        'far-from-last',
        `${name} ${shown(point)}, but ${shown(before)} at ${clockText(before.entry)}. Right?`,
        [before.entry, point.entry],
      ),
    ];
  });
}

interface UnitRow {
  readonly measure: Measure;
  readonly wrong: (value: number) => boolean;
  readonly question: string;
}

/** Outside these a value is rather in another unit than true; common practice, no source. */
const UNITS: readonly UnitRow[] = [
  { measure: 'temperature', wrong: (value) => value > 45, question: 'Is it Fahrenheit?' },
  { measure: 'temperature', wrong: (value) => value < 20, question: 'Is it a temperature of the body?' },
  { measure: 'glucose', wrong: (value) => value < 30, question: 'Is it mmol/L?' },
  { measure: 'glucose', wrong: (value) => value > 1000, question: 'Is it mg/dL already?' },
  { measure: 'systolic', wrong: (value) => value > 0 && value < 30, question: 'Is it in kPa?' },
  { measure: 'oxygen-saturation', wrong: (value) => value < 40, question: 'Is it percent?' },
  { measure: 'capillary-refill', wrong: (value) => value > 20, question: 'Is it seconds?' },
];

export const units = (chart: Chart, measure: Measure): readonly Conflict[] =>
  pointsOf(chart, measure).flatMap((point) =>
    UNITS.filter((row) => row.measure === measure && row.wrong(point.value)).map((row) =>
      conflictOf('unit', `${point.measure.replaceAll('-', ' ')} ${shown(point)}. ${row.question}`, [
        point.entry,
      ]),
    ),
  );

/** A time further back than this is rather misheard than told so late; common practice, no source. */
const LATE_HOURS = 8;

/** Care or a reading that was said to be of long before it was told: of the day before, where the hour was misheard. */
export const timesFarBack = (chart: Chart): readonly Conflict[] =>
  [...chart.care, ...chart.vitals]
    .filter((entry) => Date.parse(firstTold(entry)) - timeOf(entry) > LATE_HOURS * 3_600_000)
    .map((entry) => {
      const what = entry.kind === 'care' ? entry.care : entry.vital;
      const question = `${what.replaceAll('-', ' ')} at ${clockText(entry)}: that is hours before it was told. Which time?`;
      return conflictOf('time-far-back', question, [entry]);
    });

/** A GCS whose sum is not that of its components. */
export const sums = (chart: Chart): readonly Conflict[] =>
  vitalsOf(chart, 'gcs').flatMap((entry) => {
    const { eye, verbal, motor, total } = entry.value;
    const sum = gcsSum(eye ?? null, verbal ?? null, motor ?? null);
    if (sum === null || total === undefined || total === sum) return [];
    return [
      conflictOf('sum', `GCS ${eye} + ${verbal} + ${motor} is ${sum}, but ${total} was said. Which holds?`, [
        entry,
      ]),
    ];
  });
