// Pulse and pressure moving apart, and the pulse pressure widening while the pulse slows.

import { type Chart, clockText, type VitalEntry, vitalsOf } from '../chart.ts';
import { COMMON_PRACTICE, type Source } from '../source.ts';
import { setsOf } from '../vitals/sets.ts';
import { type Pattern, patternOf } from './pattern.ts';

export const RAISED_PRESSURE_SOURCE: Source = {
  cite: 'Cushing H. Bull Johns Hopkins Hosp 1901;12:290; sources differ on the first limb and give no thresholds',
  mark: 'from memory',
};

/** A change smaller than this many beats or mmHg is within the error of counting; common practice, no source. */
const STEP = 10;

interface Both {
  readonly pulse: VitalEntry<'pulse'> & { readonly value: { readonly rate: number } };
  readonly pressure: VitalEntry<'blood-pressure'>;
}

/** The last pulse and pressure of each set that has both. */
function pairs(chart: Chart): readonly Both[] {
  const counted = vitalsOf(chart, 'pulse').filter(
    (entry): entry is Both['pulse'] => entry.value.rate !== undefined,
  );
  const measured = vitalsOf(chart, 'blood-pressure');
  return chart.ask(setsOf).flatMap((set) => {
    const ids = new Set(set.entries.map((entry) => entry.id));
    const pulse = counted.findLast((entry) => ids.has(entry.id));
    const pressure = measured.findLast((entry) => ids.has(entry.id));
    return pulse === undefined || pressure === undefined ? [] : [{ pulse, pressure }];
  });
}

/** The last set against the earliest one from which the pulse rose and the systolic fell by a step or more. */
export function pulseUpPressureDown(chart: Chart): readonly Pattern[] {
  const sets = pairs(chart);
  const last = sets.at(-1);
  const from = sets.find(
    (set) =>
      last !== undefined &&
      last.pulse.value.rate - set.pulse.value.rate >= STEP &&
      set.pressure.value.systolic - last.pressure.value.systolic >= STEP,
  );
  if (last === undefined || from === undefined) return [];
  const text =
    `pulse up ${from.pulse.value.rate} to ${last.pulse.value.rate}, systolic down ` +
    `${from.pressure.value.systolic} to ${last.pressure.value.systolic}, ` +
    `${clockText(from.pressure)} to ${clockText(last.pressure)}`;
  return [
    patternOf(
      'pulse-up-pressure-down',
      text,
      [from.pulse, from.pressure, last.pulse, last.pressure],
      COMMON_PRACTICE,
    ),
  ];
}

const IRREGULAR = /\birregular\w*\b/i;

/** Pulse pressure up and pulse down by a step or more; irregular breathing completes it, or is named as missing. */
export function pulsePressureWidening(chart: Chart): readonly Pattern[] {
  const sets = pairs(chart).filter((set) => set.pressure.value.diastolic !== null);
  const width = (set: Both): number => set.pressure.value.systolic - (set.pressure.value.diastolic ?? 0);
  const last = sets.at(-1);
  const from = sets.find(
    (set) =>
      last !== undefined &&
      width(last) - width(set) >= STEP &&
      last.pressure.value.systolic > set.pressure.value.systolic &&
      set.pulse.value.rate - last.pulse.value.rate >= STEP,
  );
  if (last === undefined || from === undefined) return [];
  const breathing = vitalsOf(chart, 'respirations').findLast((entry) => entry.value.quality !== undefined);
  const irregular = breathing !== undefined && IRREGULAR.test((breathing.value.quality ?? []).join(' '));
  const text =
    `pulse pressure ${width(from)} to ${width(last)} ` +
    `(${from.pressure.value.systolic}/${from.pressure.value.diastolic} to ` +
    `${last.pressure.value.systolic}/${last.pressure.value.diastolic}), ` +
    `pulse down ${from.pulse.value.rate} to ${last.pulse.value.rate}` +
    `${irregular ? ', breathing irregular' : ''}`;
  return [
    patternOf(
      'pulse-pressure-widening',
      text,
      [from.pulse, from.pressure, last.pulse, last.pressure, ...(breathing === undefined ? [] : [breathing])],
      RAISED_PRESSURE_SOURCE,
      breathing === undefined ? ['whether breathing is regular'] : [],
    ),
  ];
}
