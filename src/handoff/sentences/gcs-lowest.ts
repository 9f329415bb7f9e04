// The lowest GCS, where a part that could not be tested or was not said leaves a reading without a total: compared by what it
// can be at most.

import { GCS_HIGHEST, type GcsComponent } from '../../clinical/index.ts';
import type { Series } from '../../timeline/index.ts';

type Reading = Extract<Series['readings'][number], { vital: 'gcs' }>;

const PARTS = Object.keys(GCS_HIGHEST) as readonly GcsComponent[];

/** The least and the most that the total can be; each part is 1 at least. */
function span({ value }: Reading): readonly [least: number, most: number] {
  if (value.total !== undefined) return [value.total, value.total];
  const sum = (unknown: (part: GcsComponent) => number): number =>
    PARTS.reduce((total, part) => {
      const said = value[part];
      return total + (typeof said === 'number' ? said : unknown(part));
    }, 0);
  return [sum(() => 1), sum((part) => GCS_HIGHEST[part])];
}

const hasParts = ({ value }: Reading): boolean => PARTS.some((part) => value[part] !== undefined);

export interface LowestGcs {
  readonly reading: Reading;
  /** false where a reading of which a part is missing may have been lower: then it is the lowest of the totals alone */
  readonly sure: boolean;
}

/** The lowest reading, the earliest of equals; null where there is none to compare by. */
export function lowestGcs(readings: readonly Reading[]): LowestGcs | null {
  const [lowest] = readings
    .filter(({ value }) => value.total !== undefined)
    .sort((one, other) => span(one)[0] - span(other)[0]);
  if (lowest === undefined) return null;
  const [total] = span(lowest);
  const open = readings.filter((one) => one.value.total === undefined && hasParts(one));
  const [lower] = open
    .filter((one) => span(one)[1] < total)
    .sort((one, other) => span(one)[1] - span(other)[1]);
  if (lower !== undefined) return { reading: lower, sure: true };
  return { reading: lowest, sure: open.every((one) => span(one)[0] >= total) };
}
