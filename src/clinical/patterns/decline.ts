// A falling GCS, a body that cools, and a limb that loses its pulse.

import { type Chart, clockText, type Rule, timeOf, vitalsOf } from '../chart.ts';
import {
  checksOf,
  impairedOf,
  isAbsent,
  isImpaired,
  LIMB_ENDS,
  limbWord,
  measuresMeet,
  standingOf,
  wordsOf,
} from '../limb-end.ts';
import { type Place, placeText } from '../place.ts';
import { gcsReadings } from '../score/gcs.ts';
import { COMMON_PRACTICE } from '../source.ts';
import { type Pattern, patternOf } from './pattern.ts';

/** The last sum under the best before it. */
export function fallingGcs(chart: Chart): readonly Pattern[] {
  const sums = chart
    .ask(gcsReadings)
    .flatMap((reading) =>
      reading.total === null ? [] : [{ total: reading.total, entries: reading.entries }],
    );
  const last = sums.at(-1);
  const best = sums.reduce<(typeof sums)[number] | undefined>(
    (most, each) => (most === undefined || each.total > most.total ? each : most),
    undefined,
  );
  if (last === undefined || best === undefined || last.total >= best.total) return [];
  const times = [best, last].map((each) => (each.entries[0] === undefined ? '' : clockText(each.entries[0])));
  const text = `GCS ${best.total} to ${last.total}, ${times.join(' to ')}`;
  return [patternOf('gcs-falling', text, [...best.entries, ...last.entries], COMMON_PRACTICE)];
}

/** Smaller falls are within the error of a field thermometer; common practice, no source. */
const STEP_CELSIUS = 0.5;

export function cooling(chart: Chart): readonly Pattern[] {
  const read = vitalsOf(chart, 'temperature');
  const last = read.at(-1);
  const from = read.find(
    (entry) =>
      last !== undefined && Math.round((entry.value.celsius - last.value.celsius) * 10) >= STEP_CELSIUS * 10,
  );
  if (last === undefined || from === undefined) return [];
  const text = `temperature ${from.value.celsius} to ${last.value.celsius} °C, ${clockText(from)} to ${clockText(last)}`;
  return [patternOf('cooling', text, [from, last], COMMON_PRACTICE)];
}

const WARM = ['hot', 'warm', 'normal'];
const COLD = ['cool', 'cold'];

/** Skin that was warm and is now cool or cold. */
export function skinCooling(chart: Chart): readonly Pattern[] {
  const read = vitalsOf(chart, 'skin').filter((entry) => entry.value.temperature !== undefined);
  const last = read.at(-1);
  const from = read.find((entry) => WARM.includes(entry.value.temperature ?? ''));
  if (last === undefined || from === undefined || !COLD.includes(last.value.temperature ?? '')) return [];
  const text = `skin ${from.value.temperature} to ${last.value.temperature}, ${clockText(from)} to ${clockText(last)}`;
  return [patternOf('skin-cooling', text, [from, last], COMMON_PRACTICE)];
}

/** A hand or foot whose circulation was better before: its pulse is gone, or it is weaker, colder or slower to refill. */
const worseLimb = (chart: Chart, end: Place): readonly Pattern[] => {
  const read = checksOf(chart, end, 'circulation').filter((entry) => entry.digit === undefined);
  const impaired = impairedOf(standingOf(read));
  const [now] = impaired;
  if (now === undefined) return [];
  const gone = isAbsent(now);
  // Two measures of one moment are no change: the pulse may be there and the foot cold.
  const before = read.filter((entry) => timeOf(entry) < timeOf(now) && measuresMeet(entry, now));
  const from = before.findLast((entry) => (gone ? !isAbsent(entry) : !isImpaired(entry)));
  if (from === undefined) return [];
  const words = wordsOf(impaired);
  const text = `${placeText(end.site, end.side)}: circulation ${limbWord(from)} ${clockText(from)}, ${words} ${clockText(now)}`;
  const pattern = gone ? 'limb-pulse-lost' : 'limb-circulation-less';
  return [patternOf(pattern, text, [from, ...impaired], COMMON_PRACTICE)];
};

export const LIMB_RULES: readonly Rule<readonly Pattern[]>[] = LIMB_ENDS.map(
  (end) => (chart) => worseLimb(chart, end),
);
