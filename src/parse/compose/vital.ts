// Composes one vital sign from its phrase, or refuses numbers that cannot be; each kind has its own small reader.

import type { GcsPart, Vital, VitalReading, VitalStatement } from '../../terms/index.ts';
import { hasTag, type Island, numberOf, tagOf, tagsOf } from '../islands/island.ts';
import { inRecordUnit, roundTo } from '../units.ts';
import type { HowKnown } from './talk.ts';

export interface VitalRead {
  readonly statement: VitalStatement;
  readonly known: HowKnown;
}

type Read = { readonly reading: VitalReading; readonly known?: HowKnown } | null;

// What a number of each kind can be at all. Bounds are wide: they catch what was misheard, not what is ill.
// NEMSIS v3.5.1 gives SBP and HR 0-500, RR 0-300, SpO2 0-100, temperature 0-50 (reference, 9.5); ours are tighter where
// no living or newly dead patient can have more (common practice, no source).
const BOUNDS = {
  pulse: [0, 300],
  respirations: [0, 100],
  systolic: [0, 300],
  diastolic: [0, 200],
  percent: [0, 100],
  celsius: [10, 46],
  mgPerDl: [10, 1500],
  millimetres: [0.5, 10],
  refill: [0, 30],
} as const;

const within = (value: number | null, [least, most]: readonly [number, number]): value is number =>
  value !== null && value >= least && value <= most;

const whole = (value: number | null): value is number => value !== null && Number.isInteger(value);

const READERS: Readonly<Record<Vital, (island: Island) => Read>> = {
  pulse: (island) => rateOf(island, 'pulse', BOUNDS.pulse),
  respirations: (island) => rateOf(island, 'respirations', BOUNDS.respirations),
  'blood-pressure': pressureOf,
  'oxygen-saturation': saturationOf,
  temperature: temperatureOf,
  glucose: glucoseOf,
  skin: skinOf,
  pupils: pupilsOf,
  responsiveness: responsivenessOf,
  gcs: gcsOf,
  'pain-score': (island) => {
    const score = numberOf(island, 'score') ?? numberOf(island, 'figure');
    return within(score, [0, 10]) ? { reading: { vital: 'pain-score', value: { score } } } : null;
  },
  'capillary-refill': (island) => {
    const seconds = numberOf(island, 'seconds');
    return within(seconds, BOUNDS.refill)
      ? { reading: { vital: 'capillary-refill', value: { seconds } } }
      : null;
  },
};

/** The vital sign of an island, or null where a number in it cannot be. */
export function vitalOf(island: Island): VitalRead | null {
  const vital = tagOf(island, 'vital') as Vital | null;
  const read = vital === null ? null : READERS[vital](island);
  return read === null ? null : { statement: { kind: 'vital', ...read.reading }, known: read.known ?? {} };
}

/** A vital sign from its name and a number that came after it ("pulse … ninety two"). */
export function vitalFromFigure(vital: Vital, value: number): VitalRead | null {
  const name: Partial<Record<Vital, string>> = {
    pulse: 'rate',
    respirations: 'rate',
    'oxygen-saturation': 'percent',
    temperature: 'degrees',
    glucose: 'glucose',
    'pain-score': 'score',
    gcs: 'total',
    'capillary-refill': 'seconds',
  };
  const slot = name[vital];
  if (slot === undefined) return null;
  return vitalOf({
    file: 'vitals',
    rule: `vitals.${vital}`,
    from: 0,
    to: 0,
    cost: 0,
    tags: [
      { key: 'vital', value: vital },
      { key: 'num', value: slot },
    ],
    slots: [{ rule: 'numbers.number', from: 0, to: 0, value, time: null, loose: false }],
  });
}

function rateOf(island: Island, vital: 'pulse' | 'respirations', bounds: readonly [number, number]): Read {
  const quality = [...new Set(tagsOf(island, 'quality'))];
  const words = quality.length > 0 ? { quality } : {};
  const said = numberOf(island, 'rate');
  const count = numberOf(island, 'count');
  const seconds = numberOf(island, 'window');
  // "Fifteen in fifteen seconds so sixty": what was counted must give what was said, within a beat of rounding.
  const counted = count !== null && seconds !== null && seconds > 0 ? (count * 60) / seconds : null;
  if (said !== null && counted !== null && Math.abs(said - counted) > 60 / (seconds ?? 60)) return null;
  const rate = said ?? counted;
  if (rate === null) return quality.length > 0 ? { reading: { vital, value: words } } : null;
  if (!whole(rate) || !within(rate, bounds)) return null;
  const known = said === null ? { value: 'inferred' as const } : {};
  return { reading: { vital, value: { rate, ...words } }, known };
}

function pressureOf(island: Island): Read {
  const systolic = numberOf(island, 'systolic');
  const diastolic = numberOf(island, 'diastolic');
  if (!whole(systolic) || !within(systolic, BOUNDS.systolic)) return null;
  if (diastolic === null) {
    const method = hasTag(island, 'palpation') ? { method: 'palpation' as const } : {};
    return { reading: { vital: 'blood-pressure', value: { systolic, diastolic: null, ...method } } };
  }
  if (!whole(diastolic) || !within(diastolic, BOUNDS.diastolic) || systolic <= diastolic) return null;
  // Two figures with "over" and no name are taken for a pressure only where they look like one, and marked so.
  const bare = hasTag(island, 'bare');
  if (bare && (systolic < 50 || diastolic < 20)) return null;
  return {
    reading: { vital: 'blood-pressure', value: { systolic, diastolic } },
    known: bare ? { vital: 'inferred' } : {},
  };
}

function saturationOf(island: Island): Read {
  const percent = numberOf(island, 'percent');
  if (!within(percent, BOUNDS.percent)) return null;
  const onOxygen = hasTag(island, 'oxygen') ? true : hasTag(island, 'air') ? false : null;
  return {
    reading: { vital: 'oxygen-saturation', value: { percent, ...(onOxygen === null ? {} : { onOxygen }) } },
  };
}

// Without a unit the number tells: no living patient has 80 degrees Celsius or 40 degrees Fahrenheit and is measured so.
const FAHRENHEIT_FROM = 70;

function temperatureOf(island: Island): Read {
  const whole = numberOf(island, 'degrees');
  const tenths = numberOf(island, 'tenths');
  if (whole === null || (tenths !== null && !(Number.isInteger(tenths) && within(tenths, [0, 9]))))
    return null;
  // "Thirty six five" is 36.5; the point was not said.
  const degrees = tenths === null ? whole : roundTo(whole + tenths / 10, 1);
  const said = tagOf(island, 'unit');
  const unit =
    said === 'fahrenheit' || (said === null && degrees >= FAHRENHEIT_FROM) ? 'fahrenheit' : 'celsius';
  const converted = inRecordUnit({ value: degrees, unit });
  if (converted === null || !within(converted.value, BOUNDS.celsius)) return null;
  return {
    reading: { vital: 'temperature', value: { celsius: roundTo(converted.value, 1) } },
    known: {
      ...(said === null ? { unit: 'inferred' as const } : {}),
      ...(tenths === null ? {} : { value: 'inferred' as const }),
    },
  };
}

// Meters show mmol/L up to about 33 and mg/dL from about 20: below 30 without a unit it is taken for mmol/L, and marked so.
const MMOL_BELOW = 30;

function glucoseOf(island: Island): Read {
  const value = numberOf(island, 'glucose');
  if (value === null) return null;
  const said = tagOf(island, 'unit');
  const isMmol = said === 'mmol' || (said === null && value < MMOL_BELOW);
  const converted = inRecordUnit({ value, unit: isMmol ? 'mmolPerL' : 'mgPerDl' });
  if (converted === null || !within(converted.value, BOUNDS.mgPerDl)) return null;
  return {
    reading: { vital: 'glucose', value: { mgPerDl: converted.value } },
    known: said === null && isMmol ? { unit: 'inferred' } : {},
  };
}

function skinOf(island: Island): Read {
  const color = tagOf(island, 'color');
  const temperature = tagOf(island, 'temp');
  const moisture = tagOf(island, 'moisture');
  if (color === null && temperature === null && moisture === null) return null;
  return {
    reading: {
      vital: 'skin',
      value: {
        ...(color === null ? {} : { color }),
        ...(temperature === null ? {} : { temperature }),
        ...(moisture === null ? {} : { moisture }),
      },
    },
  };
}

function yes(island: Island, key: string): boolean | null {
  const value = tagOf(island, key);
  return value === null ? null : value === 'yes';
}

function pupilsOf(island: Island): Read {
  const both = numberOf(island, 'both');
  const leftMm = numberOf(island, 'left') ?? both;
  const rightMm = numberOf(island, 'right') ?? both;
  for (const size of [leftMm, rightMm]) if (size !== null && !within(size, BOUNDS.millimetres)) return null;
  const quality = tagsOf(island, 'quality');
  const slots = {
    equal: yes(island, 'equal') ?? (both !== null ? true : null),
    round: yes(island, 'round'),
    reactive: yes(island, 'reactive'),
    leftReactive: yes(island, 'left-reactive'),
    rightReactive: yes(island, 'right-reactive'),
    leftMm,
    rightMm,
  };
  const value = Object.fromEntries(Object.entries(slots).filter(([, slot]) => slot !== null));
  if (Object.keys(value).length === 0 && quality.length === 0) return null;
  return {
    reading: { vital: 'pupils', value: { ...value, ...(quality.length > 0 ? { quality } : {}) } },
    known: both !== null && tagOf(island, 'equal') === null ? { equal: 'inferred' } : {},
  };
}

function responsivenessOf(island: Island): Read {
  const avpu = tagOf(island, 'avpu') as 'A' | 'V' | 'P' | 'U' | null;
  const said = tagOf(island, 'orientation');
  const orientation = numberOf(island, 'orientation') ?? (said === null || said === '' ? null : Number(said));
  if (orientation !== null && !(whole(orientation) && within(orientation, [0, 4]))) return null;
  if (avpu === null && orientation === null) return null;
  return {
    reading: {
      vital: 'responsiveness',
      value: { ...(avpu === null ? {} : { avpu }), ...(orientation === null ? {} : { orientation }) },
    },
  };
}

// Teasdale G, Jennett B. Lancet 1974;2:81-84: eye 1-4, verbal 1-5, motor 1-6 (from memory). "Not testable" leaves no total.
const GCS_MOST = { eye: 4, verbal: 5, motor: 6 } as const;

function gcsOf(island: Island): Read {
  const parts: { eye?: GcsPart; verbal?: GcsPart; motor?: GcsPart } = {};
  for (const part of ['eye', 'verbal', 'motor'] as const) {
    const score = tagOf(island, part) === 'NT' ? 'NT' : numberOf(island, part);
    if (score === null) continue;
    if (score !== 'NT' && !(whole(score) && within(score, [1, GCS_MOST[part]]))) return null;
    parts[part] = score;
  }
  const said = numberOf(island, 'total');
  if (said !== null && !(whole(said) && within(said, [3, 15]))) return null;
  const scores = [parts.eye, parts.verbal, parts.motor];
  const untestable = scores.includes('NT');
  const sum = scores.every((score): score is number => typeof score === 'number')
    ? scores.reduce((total, score) => total + score, 0)
    : null;
  // Parts that do not give the total said: one of the numbers was misheard, and nobody can tell which.
  if (said !== null && sum !== null && said !== sum) return null;
  const total = untestable ? null : (said ?? sum);
  if (total === null && scores.every((score) => score === undefined)) return null;
  return {
    reading: { vital: 'gcs', value: { ...parts, ...(total === null ? {} : { total }) } },
    known: said === null && total !== null ? { total: 'inferred' } : {},
  };
}
