// The main number of each vital sign, and the statement with another in its place.

import type { VitalReading, VitalStatement } from '../../terms/index.ts';
import type { Entry } from '../entry.ts';
import type { Limit } from './limits.ts';
import type { NumberPlace } from './number-place.ts';
import { celsius, mgPerDl } from './said-unit.ts';

type VitalEntry = Extract<Entry, { kind: 'vital' }>;

/** Where the number goes in a vital; null for one that has no number (skin). */
export function vitalPlace(entry: VitalEntry, value: number, words: string): NumberPlace | null {
  switch (entry.vital) {
    case 'pulse':
    case 'respirations':
      return place(entry.vital, value, { vital: entry.vital, value: { ...entry.value, rate: value } });
    case 'blood-pressure':
      return pressurePlace(entry, value);
    case 'oxygen-saturation':
      return place('percent', value, { vital: entry.vital, value: { ...entry.value, percent: value } });
    case 'temperature': {
      const degrees = celsius(value, words);
      return place('celsius', degrees, { vital: entry.vital, value: { celsius: degrees } }, false);
    }
    case 'glucose': {
      const amount = mgPerDl(value, words);
      return place('mgPerDl', amount, { vital: entry.vital, value: { mgPerDl: amount } }, false);
    }
    case 'skin':
      return null;
    case 'pupils':
      return pupilPlace(entry, value);
    case 'responsiveness':
      if (entry.value.orientation === undefined) return null;
      return place('orientation', value, {
        vital: entry.vital,
        value: { ...entry.value, orientation: value },
      });
    case 'gcs':
      return gcsPlace(entry, value);
    case 'pain-score':
      return place('score', value, { vital: entry.vital, value: { score: value } });
    case 'capillary-refill':
      return place('refillSeconds', value, { vital: entry.vital, value: { seconds: value } }, false);
  }
}

function place(limit: Limit, value: number, reading: VitalReading, whole = true): NumberPlace {
  const statement: VitalStatement = { kind: 'vital', ...reading };
  return { limit, value, whole, statement };
}

/** One number for a pressure is taken as the systolic, since that one is said first; which was meant stays open. */
function pressurePlace(
  { vital, value: before }: Extract<VitalEntry, { vital: 'blood-pressure' }>,
  value: number,
): NumberPlace {
  const taken = place('systolic', value, { vital, value: { ...before, systolic: value } });
  if (before.diastolic === null) return taken;
  if (value <= before.diastolic) return { ...taken, value: Number.NaN };
  return { ...taken, doubt: 'only one number was said: was the systolic meant?' };
}

function pupilPlace(
  { vital, value: before }: Extract<VitalEntry, { vital: 'pupils' }>,
  value: number,
): NumberPlace | null {
  const { leftMm, rightMm } = before;
  if (leftMm === undefined && rightMm === undefined) return null;
  const now = {
    ...before,
    ...(leftMm === undefined ? {} : { leftMm: value }),
    ...(rightMm === undefined ? {} : { rightMm: value }),
  };
  const taken = place('pupilMm', value, { vital, value: now }, false);
  if (leftMm === rightMm || leftMm === undefined || rightMm === undefined) return taken;
  return { ...taken, doubt: 'the pupils differed and one number was said: which side was meant?' };
}

/** A new sum makes the parts said before uncertain, so they go, and the entry says that they did. */
function gcsPlace(
  { vital, value: before }: Extract<VitalEntry, { vital: 'gcs' }>,
  value: number,
): NumberPlace {
  const taken = place('gcs', value, { vital, value: { total: value } });
  const hadParts = before.eye !== undefined || before.verbal !== undefined || before.motor !== undefined;
  return hadParts
    ? { ...taken, doubt: 'the sum was corrected: which of eye, verbal and motor changed?' }
    : taken;
}
