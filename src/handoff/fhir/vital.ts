// A vital under the standard's own profile where it has one, and under a local code where it has none.

import type { Entry } from '../../record/entry.ts';
import type { VitalReading } from '../../terms/index.ts';
import { vitalName } from '../../timeline/index.ts';
import { absent, loinc, own, quantity } from './concept.ts';
import { gcs } from './gcs.ts';
import {
  EXAM,
  observationOf,
  onlyComponents,
  qualities,
  type Said,
  VITAL_SIGNS,
  withComponents,
} from './observation.ts';
import { pupils } from './pupils.ts';
import type { Scene } from './scene.ts';
import type { Component, Observation } from './shapes.ts';
import { plainWords } from './words.ts';

type VitalEntry = Extract<Entry, { kind: 'vital' }>;
type Of<V extends VitalReading['vital']> = Extract<VitalReading, { vital: V }>['value'];

const RATES = {
  pulse: { profile: 'heartrate', name: 'heart-rate', unit: 'beats/minute' },
  respirations: { profile: 'resprate', name: 'respiratory-rate', unit: 'breaths/minute' },
} as const;

type Rate = Extract<VitalReading, { vital: 'pulse' | 'respirations' }>;

function rate({ vital, value }: Rate): Said {
  const { profile, name, unit } = RATES[vital];
  return {
    profile,
    category: VITAL_SIGNS,
    code: loinc(vitalName(vital), name),
    ...(value.rate === undefined
      ? { dataAbsentReason: absent('unknown', 'Rate not said') }
      : { valueQuantity: quantity(value.rate, '/min', unit) }),
    ...withComponents(qualities(value.quality)),
  };
}

/** A pressure felt has no lower value; the profile asks for the component, so that it says why. */
function pressure({ systolic, diastolic, method }: Of<'blood-pressure'>): Said {
  const millimetres = (value: number) => quantity(value, 'mm[Hg]', 'mmHg');
  const why =
    method === 'palpation'
      ? absent('not-performed', 'Not obtained by palpation')
      : absent('unknown', 'Not said');
  return {
    profile: 'bp',
    category: VITAL_SIGNS,
    code: loinc('Blood pressure', 'blood-pressure'),
    ...(method === undefined ? {} : { method: own('method', method) }),
    component: [
      { code: loinc('Systolic', 'systolic'), valueQuantity: millimetres(systolic) },
      diastolic === null
        ? { code: loinc('Diastolic', 'diastolic'), dataAbsentReason: why }
        : { code: loinc('Diastolic', 'diastolic'), valueQuantity: millimetres(diastolic) },
    ],
  };
}

const saturation = ({ percent, onOxygen }: Of<'oxygen-saturation'>): Said => ({
  profile: 'oxygensat',
  category: VITAL_SIGNS,
  code: loinc('Oxygen saturation', 'oxygen-saturation', 'pulse-oximetry'),
  valueQuantity: quantity(percent, '%', '%'),
  ...withComponents(
    onOxygen === undefined ? [] : [{ code: own('attribute', 'on-oxygen'), valueBoolean: onOxygen }],
  ),
});

function skin(value: Of<'skin'>): Said {
  const component = (['color', 'temperature', 'moisture'] as const).flatMap((slot): readonly Component[] => {
    const valueString = plainWords(value[slot] ?? '');
    return valueString === null ? [] : [{ code: own('attribute', slot), valueString }];
  });
  return { category: EXAM, code: own('sign', 'skin'), ...onlyComponents(component) };
}

const responsiveness = ({ avpu, orientation }: Of<'responsiveness'>): Said => ({
  category: EXAM,
  code: loinc('Level of responsiveness', 'responsiveness'),
  ...(avpu === undefined
    ? { dataAbsentReason: absent('unknown', 'Not said') }
    : { valueCodeableConcept: own('avpu', avpu) }),
  ...withComponents(
    orientation === undefined ? [] : [{ code: own('attribute', 'orientation'), valueInteger: orientation }],
  ),
});

function said(reading: VitalReading): Said {
  switch (reading.vital) {
    case 'pulse':
    case 'respirations':
      return rate(reading);
    case 'blood-pressure':
      return pressure(reading.value);
    case 'oxygen-saturation':
      return saturation(reading.value);
    case 'temperature':
      return {
        profile: 'bodytemp',
        category: VITAL_SIGNS,
        code: loinc('Body temperature', 'body-temperature'),
        valueQuantity: quantity(reading.value.celsius, 'Cel', '°C'),
      };
    case 'glucose':
      return {
        category: EXAM,
        code: own('sign', 'glucose'),
        valueQuantity: quantity(reading.value.mgPerDl, 'mg/dL', 'mg/dL'),
      };
    case 'skin':
      return skin(reading.value);
    case 'pupils':
      return pupils(reading.value);
    case 'responsiveness':
      return responsiveness(reading.value);
    case 'gcs':
      return gcs(reading.value);
    case 'pain-score':
      return {
        category: EXAM,
        code: loinc('Pain, 0 to 10', 'pain'),
        valueQuantity: quantity(reading.value.score, '{score}', 'out of 10'),
      };
    case 'capillary-refill':
      return {
        category: EXAM,
        code: loinc('Capillary refill', 'capillary-refill'),
        valueQuantity: quantity(reading.value.seconds, 's', 's'),
      };
  }
}

export const vitalObservation = (entry: VitalEntry, scene: Scene): Observation =>
  observationOf(entry, scene, said(entry));
