// NEWS2 for those of 16 and over: a total only where all seven items were taken, else the points so far and what lacks.

import type { Entry } from '../../record/entry.ts';
import { ageOf } from '../age.ts';
import { type Chart, timeOf, vitalsOf } from '../chart.ts';
import { pregnancyOf } from '../told/pregnancy.ts';
import { gcsReadings } from './gcs.ts';
import {
  NEWS2_SOURCE,
  NOT_ALERT_POINTS,
  OXYGEN_POINTS,
  type Points,
  PULSE,
  pointsIn,
  RESPIRATION,
  riskOf,
  SYSTOLIC,
  saturationPoints,
  TEMPERATURE,
} from './news2-table.ts';
import { type Score, scoreOf } from './score.ts';

export interface News2Readings {
  readonly respirations: number;
  readonly saturation: number;
  readonly onOxygen: boolean;
  readonly systolic: number;
  readonly pulse: number;
  /** C: new confusion */
  readonly consciousness: 'A' | 'C' | 'V' | 'P' | 'U';
  readonly celsius: number;
}

/** The total, 0 to 20, with all readings taken. */
export function news2Total(readings: News2Readings, scale: 1 | 2 = 1): number {
  return (
    pointsIn(readings.respirations, RESPIRATION) +
    saturationPoints(readings.saturation, readings.onOxygen, scale) +
    (readings.onOxygen ? OXYGEN_POINTS : 0) +
    pointsIn(readings.systolic, SYSTOLIC) +
    pointsIn(readings.pulse, PULSE) +
    (readings.consciousness === 'A' ? 0 : NOT_ALERT_POINTS) +
    pointsIn(readings.celsius, TEMPERATURE)
  );
}

interface Item {
  readonly name: string;
  /** null where it was not taken */
  readonly points: Points | null;
  readonly entries: readonly Entry[];
}

const item = (name: string, points: Points | null, ...entries: readonly (Entry | undefined)[]): Item => ({
  name,
  points,
  entries: entries.filter((entry) => entry !== undefined),
});

/** On oxygen where said with the saturation, or given before it; on air only where that was said. */
function oxygenItem(chart: Chart): Item & { readonly on: boolean | null } {
  const reading = vitalsOf(chart, 'oxygen-saturation').at(-1);
  const said = reading?.value.onOxygen;
  const given = chart.care.find(
    (entry) => entry.care === 'oxygen' && reading !== undefined && timeOf(entry) <= timeOf(reading),
  );
  const on = said ?? (given === undefined ? null : true);
  const points = on === null ? null : on ? OXYGEN_POINTS : 0;
  return { ...item('air or oxygen', points, said === undefined ? given : reading), on };
}

/** Alert counts as 0 only where confusion was looked for: by orientation, or by the verbal response of a GCS. */
function consciousnessItem(chart: Chart): Item {
  const name = 'consciousness, with new confusion';
  const said = vitalsOf(chart, 'responsiveness');
  const avpu = said.findLast((entry) => entry.value.avpu !== undefined);
  const orientation = said.findLast((entry) => entry.value.orientation !== undefined);
  const gcs = chart.ask(gcsReadings).at(-1);
  if (avpu?.value.avpu !== undefined && avpu.value.avpu !== 'A') return item(name, NOT_ALERT_POINTS, avpu);
  if (orientation?.value.orientation !== undefined && orientation.value.orientation < 4)
    return item(name, NOT_ALERT_POINTS, orientation);
  if (gcs?.total !== undefined && gcs.total !== null && gcs.total < 15)
    return item(name, NOT_ALERT_POINTS, ...gcs.entries);
  if (gcs?.total === 15) return item(name, 0, ...gcs.entries, avpu);
  if (avpu !== undefined && orientation !== undefined) return item(name, 0, avpu, orientation);
  return item(name, null, avpu, orientation);
}

function itemsOf(chart: Chart, scale: 1 | 2): readonly Item[] {
  const breathing = vitalsOf(chart, 'respirations').findLast((entry) => entry.value.rate !== undefined);
  const saturation = vitalsOf(chart, 'oxygen-saturation').at(-1);
  const pressure = vitalsOf(chart, 'blood-pressure').at(-1);
  const pulse = vitalsOf(chart, 'pulse').findLast((entry) => entry.value.rate !== undefined);
  const temperature = vitalsOf(chart, 'temperature').at(-1);
  const oxygen = oxygenItem(chart);
  const inBands = (value: number | undefined, bands: Parameters<typeof pointsIn>[1]): Points | null =>
    value === undefined ? null : pointsIn(value, bands);
  const percent = saturation?.value.percent;
  // On scale 2 a saturation over 92 % scores by whether it was on oxygen: not known, no points.
  const open = percent === undefined || (scale === 2 && percent > 92 && oxygen.on === null);
  return [
    item('breaths a minute', inBands(breathing?.value.rate, RESPIRATION), breathing),
    item('oxygen saturation', open ? null : saturationPoints(percent, oxygen.on === true, scale), saturation),
    oxygen,
    item('systolic pressure', inBands(pressure?.value.systolic, SYSTOLIC), pressure),
    item('pulse', inBands(pulse?.value.rate, PULSE), pulse),
    consciousnessItem(chart),
    item('temperature', inBands(temperature?.value.celsius, TEMPERATURE), temperature),
  ];
}

/**
 * NEWS2 from the latest readings. Not for those under 16 or in pregnancy (from memory). Scale 1 unless a prescriber set
 * the 88 to 92 % target. Missing items are named and the points so far given in the text; no item is taken as normal.
 */
export function news2Score(chart: Chart, scale: 1 | 2 = 1): Score {
  const age = chart.ask(ageOf);
  const pregnancy = chart.ask(pregnancyOf);
  if (age.years !== null && age.years < 16)
    return scoreOf('news2', null, 'NEWS2 is not for those under 16', age.entries, NEWS2_SOURCE);
  if (pregnancy.truth === 'yes')
    return scoreOf('news2', null, 'NEWS2 is not for use in pregnancy', pregnancy.evidence, NEWS2_SOURCE);
  const items = itemsOf(chart, scale);
  const entries = [...items.flatMap((each) => each.entries), ...age.entries];
  const sum = items.reduce((total, each) => total + (each.points ?? 0), 0);
  const missing = [
    ...items.filter((each) => each.points === null).map((each) => each.name),
    ...(age.years === null ? ['age (16 and over)'] : []),
  ];
  if (missing.length > 0)
    return scoreOf('news2', null, `NEWS2 at least ${sum}, not complete`, entries, NEWS2_SOURCE, missing);
  const risk = riskOf(
    sum,
    items.some((each) => each.points === 3),
  );
  return scoreOf('news2', sum, `NEWS2 ${sum} (scale ${scale}), ${risk}`, entries, NEWS2_SOURCE);
}
