// Which signs are out of the ordinary by their latest word, of those that no rate, sum or pressure tells; it triages nothing.

import type { Entry } from '../../record/entry.ts';
import { REFILL_LIMIT_SECONDS, type VitalReading } from '../../terms/index.ts';
import { timeOf } from '../order.ts';
import { pupilParts, sizeOf } from './pupil-parts.ts';
import { SET_MINUTES } from './set-length.ts';

type VitalEntry = Extract<Entry, { kind: 'vital' }>;
type Of<V extends VitalReading['vital']> = Extract<VitalReading, { vital: V }>['value'];

/** `grave` is what a receiver gets ready for, `mild` is told where there is room, null is nothing out of the ordinary. */
type Abnormality = 'grave' | 'mild' | null;

/**
 * Celsius, all inclusive: the bands of NEWS2 that give points. Source: Royal College of Physicians, NEWS2, 2017, chart 1
 * (read): 3 points up to 35.0, 1 up to 36.0 and from 38.1. From 40 it is heat stroke's (Bouchama and Knochel 2002, as the
 * glossary of biomet-education.net has it, read: above 40.0).
 */
const TEMPERATURE = { graveTo: 35.0, mildTo: 36.0, mildFrom: 38.1, graveFrom: 40.0 };

/**
 * mg/dL: under 4 mmol/L is too low in people with diabetes (Australia's National Diabetes Services Scheme, fact sheet on
 * hypoglycaemia, read); from 11.1 mmol/L at any time of day is high (Diabetes Care 1997;20:1183-1195, as adapted in a page read).
 */
const GLUCOSE = { graveUnder: 72, mildFrom: 200 };

/** Blue goes with little oxygen; that blood is short (pale, grey, mottled) the pressure and pulse tell too. Common practice, no source. */
const GRAVE_COLORS = ['cyanotic'];
const ORDINARY_COLORS = ['pink', 'normal'];
const WET = ['clammy', 'diaphoretic'];

const color = (said: string): Abnormality =>
  GRAVE_COLORS.includes(said) ? 'grave' : ORDINARY_COLORS.includes(said) ? null : 'mild';

interface Part {
  /** what of the sign it is: a later word on the same part takes its place */
  readonly part: string;
  readonly abnormality: Abnormality;
}

/** Cold skin alone is what the weather makes; common practice, no source. */
const skinParts = ({ color: tint, temperature, moisture }: Of<'skin'>): readonly Part[] => [
  ...(tint === undefined ? [] : [{ part: 'color', abnormality: color(tint) }]),
  ...(temperature === undefined
    ? []
    : [{ part: 'warmth', abnormality: temperature === 'hot' ? ('mild' as const) : null }]),
  ...(moisture === undefined
    ? []
    : [{ part: 'moisture', abnormality: WET.includes(moisture) ? ('mild' as const) : null }]),
];

function temperature({ celsius }: Of<'temperature'>): Abnormality {
  const { graveTo, mildTo, mildFrom, graveFrom } = TEMPERATURE;
  if (celsius <= graveTo || celsius >= graveFrom) return 'grave';
  return celsius <= mildTo || celsius >= mildFrom ? 'mild' : null;
}

const glucose = ({ mgPerDl }: Of<'glucose'>): Abnormality =>
  mgPerDl < GLUCOSE.graveUnder ? 'grave' : mgPerDl >= GLUCOSE.mildFrom ? 'mild' : null;

function partsOf(reading: VitalReading): readonly Part[] {
  switch (reading.vital) {
    case 'temperature':
      return [{ part: 'all', abnormality: temperature(reading.value) }];
    case 'glucose':
      return [{ part: 'all', abnormality: glucose(reading.value) }];
    case 'capillary-refill':
      return [{ part: 'all', abnormality: reading.value.seconds > REFILL_LIMIT_SECONDS ? 'mild' : null }];
    case 'skin':
      return skinParts(reading.value);
    case 'pupils':
      return pupilParts(reading.value);
    default:
      return [];
  }
}

interface Held {
  readonly abnormality: Abnormality;
  readonly entries: readonly VitalEntry[];
}

/** "Left pupil three", and in a breath of its own "right pupil six": the reading of the other one that is of the same set. */
function otherPupil(entry: VitalEntry, before: readonly VitalEntry[]): VitalEntry | undefined {
  if (entry.vital !== 'pupils') return undefined;
  const { value } = entry;
  const missing = (['left', 'right'] as const).filter((eye) => sizeOf(value, eye) === undefined);
  const [eye] = missing;
  if (missing.length !== 1 || eye === undefined) return undefined;
  return before.findLast(
    (other) =>
      other.vital === 'pupils' &&
      sizeOf(other.value, eye) !== undefined &&
      timeOf(entry) - timeOf(other) <= SET_MINUTES * 60_000,
  );
}

function sizesOf(entry: VitalEntry, before: readonly VitalEntry[]): readonly Held[] {
  const other = otherPupil(entry, before);
  if (entry.vital !== 'pupils' || other?.vital !== 'pupils') return [];
  const { leftMm = other.value.leftMm, rightMm = other.value.rightMm } = entry.value;
  if (leftMm === undefined || rightMm === undefined) return [];
  const both = pupilParts({ leftMm, rightMm }).find(({ part }) => part === 'size');
  return both === undefined ? [] : [{ abnormality: both.abnormality, entries: [other, entry] }];
}

export interface AbnormalSign {
  readonly abnormality: 'grave' | 'mild';
  /** the readings that say so, earliest first */
  readonly readings: readonly VitalEntry[];
}

/**
 * How far a sign is out of the ordinary now: of each part of it the latest word counts, so that "right pupil reacts" says
 * nothing of a left one that did not. `readings` are those of one sign, earliest first; null where nothing is.
 */
export function abnormalNow(readings: readonly VitalEntry[]): AbnormalSign | null {
  const held = new Map<string, Held>();
  for (const [index, entry] of readings.entries()) {
    for (const { part, abnormality } of partsOf(entry)) held.set(part, { abnormality, entries: [entry] });
    for (const sizes of sizesOf(entry, readings.slice(0, index))) held.set('size', sizes);
  }
  const bad = [...held.values()].filter(({ abnormality }) => abnormality !== null);
  if (bad.length === 0) return null;
  const telling = new Set(bad.flatMap(({ entries }) => entries));
  return {
    abnormality: bad.some(({ abnormality }) => abnormality === 'grave') ? 'grave' : 'mild',
    readings: readings.filter((entry) => telling.has(entry)),
  };
}
