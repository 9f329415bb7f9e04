// The Glasgow Coma Scale: components before the sum, and no sum where a component is missing or not testable.

import type { GcsPart } from '../../terms/index.ts';
import { type Chart, timeOf, type VitalEntry, vitalsOf } from '../chart.ts';
import type { Source } from '../source.ts';
import { SET_MINUTES } from '../vitals/set-length.ts';
import { type Score, scoreOf } from './score.ts';

export const GCS_SOURCE: Source = {
  cite: 'Glasgow Coma Scale: Teasdale G, Jennett B. Lancet 1974;2:81-84; Teasdale G et al. Lancet Neurol 2014;13:844-854',
  mark: 'from memory',
  note: 'ratings read in a rendering of the 2014 wording',
};

export const GCS_HIGHEST = { eye: 4, verbal: 5, motor: 6 } as const;
export type GcsComponent = keyof typeof GCS_HIGHEST;
const COMPONENTS: readonly GcsComponent[] = ['eye', 'verbal', 'motor'];

export interface GcsReading {
  readonly at: number;
  readonly eye: GcsPart | null;
  readonly verbal: GcsPart | null;
  readonly motor: GcsPart | null;
  /** null where a component is missing or not testable, unless the sum alone was said */
  readonly total: number | null;
  readonly entries: readonly VitalEntry<'gcs'>[];
}

/** The sum, 3 to 15; null where a component is missing or NT (from memory: the 2014 wording reports no total then). */
export function gcsSum(eye: GcsPart | null, verbal: GcsPart | null, motor: GcsPart | null): number | null {
  return typeof eye === 'number' && typeof verbal === 'number' && typeof motor === 'number'
    ? eye + verbal + motor
    : null;
}

/** Each GCS that was said, earliest first; components said one by one within one set of vitals are put together. */
export function gcsReadings(chart: Chart): readonly GcsReading[] {
  const said = vitalsOf(chart, 'gcs');
  return said.map((entry, index) => {
    const at = timeOf(entry);
    const used: VitalEntry<'gcs'>[] = [entry];
    const partOf = (component: GcsComponent): GcsPart | null => {
      const own = entry.value[component];
      if (own !== undefined) return own;
      if (entry.value.total !== undefined) return null;
      for (let before = index - 1; before >= 0; before -= 1) {
        const other = said[before];
        if (other === undefined || at - timeOf(other) > SET_MINUTES * 60_000) return null;
        const part = other.value[component];
        if (part === undefined) continue;
        used.push(other);
        return part;
      }
      return null;
    };
    const [eye, verbal, motor] = [partOf('eye'), partOf('verbal'), partOf('motor')];
    const untestable = eye === 'NT' || verbal === 'NT' || motor === 'NT';
    const total = gcsSum(eye, verbal, motor) ?? (untestable ? null : (entry.value.total ?? null));
    return { at, eye, verbal, motor, total, entries: [...new Set(used)] };
  });
}

export function gcsText(reading: GcsReading): string {
  const { eye, verbal, motor, total } = reading;
  if (eye === null && verbal === null && motor === null) return `GCS ${total ?? 'without a total'}`;
  const parts = `E${eye ?? '?'} V${verbal ?? '?'} M${motor ?? '?'}`;
  return total === null ? `GCS ${parts}, no total` : `GCS ${parts} = ${total}`;
}

const gaps = (reading: GcsReading): readonly string[] =>
  COMPONENTS.flatMap((component) => {
    const part = reading[component];
    if (part === 'NT') return [`${component} response (not testable)`];
    return part === null ? [`${component} response`] : [];
  });

/** The latest GCS; its value is null where a component is missing or not testable. */
export function gcsScore(chart: Chart): Score {
  const latest = gcsReadings(chart).at(-1);
  if (latest === undefined) return scoreOf('gcs', null, 'GCS not recorded', [], GCS_SOURCE, ['GCS']);
  const missing = latest.total === null ? gaps(latest) : [];
  return scoreOf('gcs', latest.total, gcsText(latest), latest.entries, GCS_SOURCE, missing);
}
