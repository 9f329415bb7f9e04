// Which changes a hand can make to an entry: its side, its yes-or-no, its number, or its words.

import { type Entry, firstTold } from '../../record/index.ts';
import { isPaired, type Side, type VitalReading } from '../../terms/index.ts';

/** A number by itself, or two said as "over". */
export type NumberField =
  | { readonly kind: 'single'; readonly label: string; readonly value: number; readonly unit: string }
  | { readonly kind: 'pressure'; readonly upper: number; readonly lower: number | null }
  | { readonly kind: 'level'; readonly name: string; readonly prefix: string; readonly value: number }
  | { readonly kind: 'pupils'; readonly left: number | null; readonly right: number | null }
  | {
      readonly kind: 'gcs';
      readonly eye: number | null;
      readonly verbal: number | null;
      readonly motor: number | null;
    };

/** The sides that can be chosen; empty where the entry names no site. */
export function sidesToChoose(entry: Entry): readonly Side[] {
  if (!('site' in entry) || entry.site === undefined) return [];
  return isPaired(entry.site) ? ['left', 'right', 'both'] : ['left', 'midline', 'right'];
}

/** True where yes and no can be changed for each other. */
export const hasAnswer = (entry: Entry): boolean =>
  entry.kind === 'finding' || entry.kind === 'csm' || entry.kind === 'history';

const single = (label: string, value: number | undefined, unit: string): NumberField | null =>
  value === undefined ? null : { kind: 'single', label, value, unit };

/** The number that can be changed, or null where there is none. */
export function numberToChange(entry: Entry): NumberField | null {
  switch (entry.kind) {
    case 'vital':
      return vitalNumber(entry);
    case 'finding':
      return (
        single('Size', entry.size?.value, 'cm') ??
        single('Severity', typeof entry.severity === 'number' ? entry.severity : undefined, 'out of 10') ??
        single('How many', entry.count, '') ??
        levelNumber(entry.level)
      );
    case 'csm':
      return (
        single('Refill', entry.capRefillSeconds, 'seconds') ??
        single('Strength', typeof entry.strength === 'number' ? entry.strength : undefined, 'of 5')
      );
    case 'history':
      return single('Age', entry.years, 'years') ?? single('Weight', entry.kg, 'kg');
    default:
      return null;
  }
}

/** How many of each there are, by the letter or word before the number. */
const LEVELS: readonly (readonly [prefix: string, name: string, many: number])[] = [
  ['C', 'Neck bone C', 7],
  ['T', 'Back bone T', 12],
  ['L', 'Back bone L', 5],
  ['rib-', 'Rib', 12],
];

function levelNumber(level: string | undefined): NumberField | null {
  const [, prefix, digits] = /^(C|T|L|rib-)(\d+)$/.exec(level ?? '') ?? [];
  const known = LEVELS.find(([one]) => one === prefix);
  return known === undefined
    ? null
    : { kind: 'level', name: known[1], prefix: known[0], value: Number(digits) };
}

/** `C5`, or null where there is no such bone. */
export function levelOf(prefix: string, value: number): string | null {
  const many = LEVELS.find(([one]) => one === prefix)?.[2] ?? 0;
  return Number.isInteger(value) && value >= 1 && value <= many ? `${prefix}${value}` : null;
}

type Pupils = Extract<VitalReading, { readonly vital: 'pupils' }>['value'];

/** The pupils with sizes as a hand put them; a pair of one size is said of, a pair of two is not equal. */
export function pupilsOf(before: Pupils, left: number, right: number): Pupils {
  const equal = left === right ? before.equal : false;
  return { ...before, ...(equal === undefined ? {} : { equal }), leftMm: left, rightMm: right };
}

function vitalNumber(reading: VitalReading): NumberField | null {
  switch (reading.vital) {
    case 'pulse':
    case 'respirations':
      return single('Rate', reading.value.rate, 'a minute');
    case 'blood-pressure':
      return { kind: 'pressure', upper: reading.value.systolic, lower: reading.value.diastolic };
    case 'oxygen-saturation':
      return single('Saturation', reading.value.percent, '%');
    case 'temperature':
      return single('Temperature', reading.value.celsius, '°C');
    case 'glucose':
      return single('Glucose', reading.value.mgPerDl, 'mg/dL');
    case 'pain-score':
      return single('Pain', reading.value.score, 'out of 10');
    case 'capillary-refill':
      return single('Refill', reading.value.seconds, 'seconds');
    case 'responsiveness':
      return single('Oriented times', reading.value.orientation, '');
    case 'pupils': {
      const { leftMm, rightMm } = reading.value;
      if (leftMm === undefined && rightMm === undefined) return null;
      return { kind: 'pupils', left: leftMm ?? null, right: rightMm ?? null };
    }
    case 'gcs': {
      const { eye, verbal, motor, total } = reading.value;
      const part = (said: number | 'NT' | undefined): number | null =>
        typeof said === 'number' ? said : null;
      if (eye === undefined && verbal === undefined && motor === undefined)
        return single('GCS', total, 'of 15');
      return { kind: 'gcs', eye: part(eye), verbal: part(verbal), motor: part(motor) };
    }
    default:
      return null;
  }
}

/** True where the time it was so is worth putting right: one that was spoken, and of what runs by the clock. */
export const hasTime = (entry: Entry): boolean =>
  entry.kind === 'care' || entry.kind === 'vital' || Date.parse(entry.at) !== Date.parse(firstTold(entry));

/** A pressure as it would be said, so that the grammar judges it as it judges talk. */
export const pressureWords = (upper: number, lower: number | null): string =>
  lower === null ? `blood pressure ${upper} by palpation` : `blood pressure ${upper} over ${lower}`;

/** A coma score as it would be said. */
export const gcsWords = (eye: number, verbal: number, motor: number): string =>
  `GCS eyes ${eye}, verbal ${verbal}, motor ${motor}`;
