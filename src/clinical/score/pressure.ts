// Mean arterial pressure and shock index from the latest readings, with the published cut-offs for children.

import { ageOf, wholeYears } from '../age.ts';
import { type Chart, clockText, timeOf, vitalsOf } from '../chart.ts';
import type { Source } from '../source.ts';
import { PAIR_MINUTES } from '../vitals/set-length.ts';
import { rounded, type Score, scoreOf } from './score.ts';

export const MAP_SOURCE: Source = {
  cite: 'mean arterial pressure = diastolic + a third of the pulse pressure (any physiology text)',
  mark: 'from memory',
};

export const SHOCK_INDEX_SOURCE: Source = {
  cite: 'shock index = pulse / systolic: Koch E et al. Open Access Emerg Med 2019;11:179-199; children: Acker SN et al. J Pediatr Surg 2015;50:331-334',
  mark: 'read',
};

/** Mean arterial pressure in mmHg, not rounded. */
export const meanArterialPressure = (systolic: number, diastolic: number): number =>
  diastolic + (systolic - diastolic) / 3;

/** Pulse per minute over systolic mmHg, not rounded. */
export const shockIndex = (rate: number, systolic: number): number => rate / systolic;

/** Shock index above which the age group counts as raised (strictly above). */
export const CHILD_SHOCK_INDEX = [
  { from: 4, to: 6, above: 1.22 },
  { from: 7, to: 12, above: 1.0 },
  { from: 13, to: 16, above: 0.9 },
] as const;

const ADULT_ABOVE = 1.0;

/** The cut-off for an age in whole years; null under 4, where none was published; 1.0 where the age is not known. */
export function shockIndexCutOff(years: number | null): number | null {
  if (years === null || years >= 17) return ADULT_ABOVE;
  return CHILD_SHOCK_INDEX.find((row) => years >= row.from && years <= row.to)?.above ?? null;
}

/** MAP of the latest pressure, to the whole mmHg; null for a pressure by palpation. */
export function meanArterialPressureScore(chart: Chart): Score {
  const name = 'mean-arterial-pressure';
  const latest = vitalsOf(chart, 'blood-pressure').at(-1);
  if (latest === undefined) return scoreOf(name, null, 'MAP not known', [], MAP_SOURCE, ['blood pressure']);
  const { systolic, diastolic } = latest.value;
  if (diastolic === null)
    return scoreOf(name, null, 'MAP not known', [latest], MAP_SOURCE, ['diastolic pressure']);
  const value = Math.round(meanArterialPressure(systolic, diastolic));
  return scoreOf(name, value, `MAP ${value} mmHg from ${systolic}/${diastolic}`, [latest], MAP_SOURCE);
}

/**
 * Shock index of the latest pulse and the latest systolic, to two decimals; none where they were not taken together, for
 * which the triage criterion of pulse over systolic has the same limit.
 */
export function shockIndexScore(chart: Chart): Score {
  const pulse = vitalsOf(chart, 'pulse').findLast((entry) => entry.value.rate !== undefined);
  const pressure = vitalsOf(chart, 'blood-pressure').at(-1);
  const rate = pulse?.value.rate;
  if (pulse === undefined || rate === undefined || pressure === undefined || pressure.value.systolic === 0) {
    const missing = [
      ...(pulse === undefined ? ['pulse'] : []),
      ...(pressure === undefined ? ['systolic pressure'] : []),
    ];
    const entries = [pulse, pressure].filter((entry) => entry !== undefined);
    return scoreOf('shock-index', null, 'shock index not known', entries, SHOCK_INDEX_SOURCE, missing);
  }
  const apart = Math.abs(timeOf(pulse) - timeOf(pressure)) / 60_000;
  if (apart > PAIR_MINUTES) {
    const times = `pulse ${rate} at ${clockText(pulse)}, systolic ${pressure.value.systolic} at ${clockText(pressure)}`;
    return scoreOf(
      'shock-index',
      null,
      `shock index not known: ${times}`,
      [pulse, pressure],
      SHOCK_INDEX_SOURCE,
      ['a pulse and a pressure taken together'],
    );
  }
  const years = chart.ask(ageOf);
  const value = rounded(shockIndex(rate, pressure.value.systolic), 2);
  const cutOff = shockIndexCutOff(years.years === null ? null : wholeYears(years.years));
  const exact = shockIndex(rate, pressure.value.systolic);
  const compared =
    cutOff === null
      ? 'no published cut-off at this age'
      : `${exact > cutOff ? 'above' : 'not above'} ${cutOff}${years.years !== null ? '' : years.told.length > 1 ? ' (adult; age not settled)' : ' (adult; age not said)'}`;
  return scoreOf(
    'shock-index',
    value,
    `shock index ${rate}/${pressure.value.systolic} = ${value}, ${compared}`,
    [pulse, pressure, ...years.entries],
    SHOCK_INDEX_SOURCE,
  );
}
