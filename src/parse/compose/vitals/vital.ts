// Composes one vital sign from its phrase, or refuses numbers that cannot be; each kind has its own small reader.

import type { Vital } from '../../../terms/index.ts';
import { type Island, numberOf, tagOf } from '../../islands/island.ts';
import { gcsOf } from './gcs.ts';
import { glucoseOf } from './glucose.ts';
import { pressureOf } from './pressure.ts';
import { pupilsOf } from './pupils.ts';
import { rateOf } from './rate.ts';
import { responsivenessOf } from './responsiveness.ts';
import { saturationOf } from './saturation.ts';
import { skinOf } from './skin.ts';
import { temperatureOf } from './temperature.ts';
import { BOUNDS, isWithin, type Read, type VitalRead } from './vital-read.ts';

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
    return isWithin(score, BOUNDS.painScore) ? { reading: { vital: 'pain-score', value: { score } } } : null;
  },
  'capillary-refill': (island) => {
    const seconds = numberOf(island, 'seconds');
    return isWithin(seconds, BOUNDS.refill)
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

// What the grammar calls the one number of a kind that has one.
const NUMBER_NAMES: Partial<Readonly<Record<Vital, string>>> = {
  pulse: 'rate',
  respirations: 'rate',
  'oxygen-saturation': 'percent',
  temperature: 'degrees',
  glucose: 'glucose',
  'pain-score': 'score',
  gcs: 'total',
  'capillary-refill': 'seconds',
};

/** A vital sign from its name and a number that came apart from it ("pulse … ninety two"); null where it cannot be. */
export function vitalFromFigure(vital: Vital, value: number): VitalRead | null {
  const name = NUMBER_NAMES[vital];
  if (name === undefined) return null;
  return vitalOf({
    file: 'vitals',
    rule: `vitals.${vital}`,
    from: 0,
    to: 0,
    cost: 0,
    tags: [
      { key: 'vital', value: vital },
      { key: 'num', value: name },
    ],
    slots: [{ rule: 'numbers.number', from: 0, to: 0, value, time: null, loose: false }],
  });
}
