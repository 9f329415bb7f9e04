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

interface Timed {
  readonly entry: VitalEntry<'gcs'>;
  readonly at: number;
}

interface Gathered {
  readonly parts: Readonly<Record<GcsComponent, GcsPart | null>>;
  readonly entries: readonly VitalEntry<'gcs'>[];
}

/** The components an entry names, and those it does not from the nearest entries before it in the same set. */
function gathered(said: readonly Timed[], index: number): Gathered {
  const parts: Record<GcsComponent, GcsPart | null> = { eye: null, verbal: null, motor: null };
  const entries: VitalEntry<'gcs'>[] = [];
  const last = said[index]?.at ?? 0;
  for (let back = index; back >= 0; back -= 1) {
    const before = said[back];
    if (before === undefined || last - before.at > SET_MINUTES * 60_000) break;
    const { entry } = before;
    for (const component of COMPONENTS) {
      const part = entry.value[component];
      if (part === undefined || parts[component] !== null) continue;
      parts[component] = part;
      entries.push(entry);
    }
  }
  return { parts, entries: [...new Set(entries)] };
}

/**
 * Each GCS that was said, earliest first. Components said one by one within one set of vitals are put together; a sum
 * said alone takes the components said just before it only where they add up to it.
 */
export function gcsReadings(chart: Chart): readonly GcsReading[] {
  const said = vitalsOf(chart, 'gcs').map((entry) => ({ entry, at: timeOf(entry) }));
  return said.map(({ entry, at }, index) => {
    const whole = gathered(said, index);
    const { total } = entry.value;
    const own = {
      eye: entry.value.eye ?? null,
      verbal: entry.value.verbal ?? null,
      motor: entry.value.motor ?? null,
    };
    const sum = gcsSum(whole.parts.eye, whole.parts.verbal, whole.parts.motor);
    const { parts, entries } = total === undefined || sum === total ? whole : { parts: own, entries: [] };
    const untestable = COMPONENTS.some((component) => parts[component] === 'NT');
    return {
      at,
      ...parts,
      total: gcsSum(parts.eye, parts.verbal, parts.motor) ?? (untestable ? null : (total ?? null)),
      entries: [...new Set([entry, ...entries])],
    };
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
  const latest = chart.ask(gcsReadings).at(-1);
  if (latest === undefined) return scoreOf('gcs', null, 'GCS not recorded', [], GCS_SOURCE, ['GCS']);
  const missing = latest.total === null ? gaps(latest) : [];
  return scoreOf('gcs', latest.total, gcsText(latest), latest.entries, GCS_SOURCE, missing);
}
