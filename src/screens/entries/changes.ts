// Which changes a hand can make to an entry: its side, its yes-or-no, its number, or its words.

import type { Entry } from '../../record/index.ts';
import { isPaired, type Side, type VitalReading } from '../../terms/index.ts';

/** A number by itself, or two said as "over". */
export type NumberField =
  | { readonly kind: 'single'; readonly label: string; readonly value: number; readonly unit: string }
  | { readonly kind: 'pressure'; readonly upper: number; readonly lower: number | null }
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
        single('How many', entry.count, '')
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

/** A pressure as it would be said, so that the grammar judges it as it judges talk. */
export const pressureWords = (upper: number, lower: number | null): string =>
  lower === null ? `blood pressure ${upper} by palpation` : `blood pressure ${upper} over ${lower}`;

/** A coma score as it would be said. */
export const gcsWords = (eye: number, verbal: number, motor: number): string =>
  `GCS eyes ${eye}, verbal ${verbal}, motor ${motor}`;
