// The criteria that a number decides: one reading on the wrong side at any time meets them, for it was so then.

import type { EntryFacts } from '../../record/entry.ts';
import { ageMissing, ageOf, wholeYears } from '../age.ts';
import { type Answer, all, any, no, unknown, yes } from '../answer.ts';
import { type Chart, clockText, timeOf, type VitalEntry, vitalsOf } from '../chart.ts';
import { gcsReadings } from '../score/gcs.ts';
import { PAIR_MINUTES } from '../vitals/set-length.ts';

/** Yes where the age in whole years lies within the bounds. */
export function ageBetween(chart: Chart, from: number, to: number): Answer {
  const age = chart.ask(ageOf);
  const { years, told, entries } = age;
  if (years === null) return unknown([ageMissing(age)], entries);
  const within = told.filter((one) => wholeYears(one) >= from && wholeYears(one) <= to);
  // Of two ages that are near each other both must lie on one side of the limit.
  if (within.length > 0 && within.length < told.length) return unknown([ageMissing(age)], entries);
  const text = `age ${told.join(' or ')}`;
  return within.length > 0 ? yes(entries, text) : no(entries, text);
}

const pressureText = (entry: VitalEntry<'blood-pressure'>): string =>
  `systolic ${entry.value.systolic} mmHg at ${clockText(entry)}`;

/** Any systolic strictly under the limit. */
function systolicUnder(chart: Chart, limit: number): Answer {
  const read = vitalsOf(chart, 'blood-pressure');
  if (read.length === 0) return unknown(['systolic pressure']);
  const low = read.filter((entry) => entry.value.systolic < limit);
  return low.length > 0
    ? yes(low, `${low.map(pressureText).join(', ')}, under ${limit}`)
    : no(read, `systolic never under ${limit}`);
}

/** Ages 0 to 9: systolic under 70 + 2 x age. At an unknown age, a systolic that no such age would flag is no. */
export function childPressure(chart: Chart): Answer {
  const { years } = chart.ask(ageOf);
  const age = ageBetween(chart, 0, 9);
  if (age.truth === 'no') return age;
  const limit = 70 + 2 * (years === null ? 9 : wholeYears(years));
  const pressure = systolicUnder(chart, limit);
  // The limit is the age's: a pressure that is not under it rests on the age too.
  return all([age, { ...pressure, evidence: [...pressure.evidence, ...age.evidence] }]);
}

/** Systolic under the limit within an age band. */
export const pressureAt =
  (from: number, to: number, limit: number) =>
  (chart: Chart): Answer =>
    all([ageBetween(chart, from, to), systolicUnder(chart, limit)]);

interface Timed<E> {
  readonly entry: E;
  readonly at: number;
}

const timedOf = <E extends EntryFacts>(entries: readonly E[]): readonly Timed<E>[] =>
  entries.map((entry) => ({ entry, at: timeOf(entry) }));

/** Those of `others` that are nearest in time, and near enough to be read together. */
function nearest<E>(at: number, others: readonly Timed<E>[]): readonly Timed<E>[] {
  const gap = Math.min(...others.map((other) => Math.abs(other.at - at)));
  return gap > PAIR_MINUTES * 60_000 ? [] : others.filter((other) => Math.abs(other.at - at) === gap);
}

type Pulse = VitalEntry<'pulse'>;
type Pressure = VitalEntry<'blood-pressure'>;

/** Each pulse with the pressure nearest to it and each pressure with its nearest pulse: never crosswise over two sets. */
function pairsOf(pulses: readonly Pulse[], pressures: readonly Pressure[]) {
  const [rates, read] = [timedOf(pulses), timedOf(pressures)];
  return rates.flatMap((pulse) =>
    read
      .filter(
        (pressure) =>
          nearest(pulse.at, read).includes(pressure) || nearest(pressure.at, rates).includes(pulse),
      )
      .map((pressure) => ({ pulse: pulse.entry, pressure: pressure.entry })),
  );
}

/** Age 10 and over: pulse over systolic, of a pulse and a pressure taken together. */
export function pulseOverSystolic(chart: Chart): Answer {
  const pulses = vitalsOf(chart, 'pulse').filter((entry) => entry.value.rate !== undefined);
  const pressures = vitalsOf(chart, 'blood-pressure');
  const missing = [
    ...(pulses.length === 0 ? ['pulse'] : []),
    ...(pressures.length === 0 ? ['systolic pressure'] : []),
  ];
  const age = ageBetween(chart, 10, Number.POSITIVE_INFINITY);
  if (missing.length > 0) return all([age, unknown(missing, [...pulses, ...pressures])]);
  const pairs = pairsOf(pulses, pressures).map(({ pulse, pressure }) => ({
    pulse,
    pressure,
    rate: pulse.value.rate ?? 0,
    systolic: pressure.value.systolic,
  }));
  if (pairs.length === 0)
    return all([age, unknown(['a pulse and a pressure taken together'], [...pulses, ...pressures])]);
  const over = pairs.filter((pair) => pair.rate > pair.systolic);
  const entries = (over.length > 0 ? over : pairs).flatMap((pair) => [pair.pulse, pair.pressure]);
  const compared = over.map((pair) => `pulse ${pair.rate} over systolic ${pair.systolic}`).join(', ');
  return all([age, over.length > 0 ? yes(entries, compared) : no(entries, 'pulse never over systolic')]);
}

/** Breathing under 10 or over 29 a minute. */
export function breathingRate(chart: Chart): Answer {
  const read = vitalsOf(chart, 'respirations').filter((entry) => entry.value.rate !== undefined);
  if (read.length === 0) return unknown(['breaths a minute']);
  const out = read.filter((entry) => (entry.value.rate ?? 0) < 10 || (entry.value.rate ?? 0) > 29);
  return out.length > 0
    ? yes(out, out.map((entry) => `breathing ${entry.value.rate} at ${clockText(entry)}`).join(', '))
    : no(read, 'breathing always 10 to 29');
}

/** Saturation under 90 % on room air; a reading of which the air was not said decides nothing. */
export function roomAirSaturation(chart: Chart): Answer {
  const read = vitalsOf(chart, 'oxygen-saturation');
  const low = read.filter((entry) => entry.value.onOxygen === false && entry.value.percent < 90);
  const text = (entry: VitalEntry<'oxygen-saturation'>): string =>
    `saturation ${entry.value.percent} % at ${clockText(entry)}`;
  if (low.length > 0) return yes(low, `${low.map(text).join(', ')} on room air`);
  if (read.length === 0) return unknown(['oxygen saturation on room air']);
  const doubtful = read.filter((entry) => entry.value.onOxygen !== false);
  const lowDoubtful = doubtful.filter((entry) => entry.value.percent < 90);
  if (lowDoubtful.length > 0)
    return unknown(['whether it was on room air'], lowDoubtful, lowDoubtful.map(text).join(', '));
  return doubtful.length === read.length
    ? unknown(['oxygen saturation on room air'], read)
    : no(
        read.filter((entry) => entry.value.onOxygen === false),
        'on room air never under 90 %',
      );
}

/** The span in which the motor response lies, from the component or from what the sum leaves open; null: not known. */
function motorSpan(reading: ReturnType<typeof gcsReadings>[number]): readonly [number, number] | null {
  if (typeof reading.motor === 'number') return [reading.motor, reading.motor];
  if (reading.total === null || reading.motor === 'NT') return null;
  return [Math.max(1, reading.total - 9), Math.min(6, reading.total - 2)];
}

/** Motor response under 6, or no response to voice at all. NT decides nothing. */
export function cannotFollowCommands(chart: Chart): Answer {
  const answers = chart.ask(gcsReadings).map((reading): Answer => {
    const span = motorSpan(reading);
    const shown = `motor response ${typeof reading.motor === 'number' ? reading.motor : `by the GCS of ${reading.total}`}`;
    if (span === null) return unknown(['GCS motor response'], reading.entries);
    if (span[1] < 6) return yes(reading.entries, shown);
    return span[0] === 6 ? no(reading.entries, shown) : unknown(['GCS motor response'], reading.entries);
  });
  const silent = vitalsOf(chart, 'responsiveness').filter(
    (entry) => entry.value.avpu === 'P' || entry.value.avpu === 'U',
  );
  const met = answers.filter((answer) => answer.truth === 'yes');
  if (silent.length > 0)
    met.push(yes(silent, `AVPU ${silent.map((entry) => entry.value.avpu).join(', ')}: no response to voice`));
  return met.length > 0 ? any(met) : (answers.at(-1) ?? unknown(['GCS motor response']));
}
