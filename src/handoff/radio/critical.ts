// The values that get lost on the way, which are told early, told again at the end, and asked back.

import { offOf, type Tourniquet } from '../../clinical/index.ts';
import { isPaired, type Side, type Site, type Vital } from '../../terms/index.ts';
import { clock, type Day, dayOf, readingText, type Series, series, siteName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { metFlags } from '../sentences/flags.ts';
import { tourniquetsIn } from '../sentences/tourniquet.ts';
import { type Trust, trustIn } from '../sentences/trust.ts';
import { isAlike, lowestOf } from '../sentences/vitals.ts';
import { spokenCriterion } from './criterion.ts';
import { speak } from './speak.ts';

export type CriticalName =
  | 'blood-pressure'
  | 'lowest-pressure'
  | 'gcs'
  | 'lowest-gcs'
  | 'pulse'
  | 'tourniquet'
  | 'red-criterion';

export interface CriticalValue {
  readonly name: CriticalName;
  /** as it is said and asked back: `pulse one one two` */
  readonly spoken: string;
  /** the numbers in it, in the order said; a clock time as `1351` */
  readonly numbers: readonly number[];
  /** the patient's side in it, or null where it has none */
  readonly side: Side | null;
  /** ids of the entries it comes from */
  readonly entries: readonly string[];
  readonly trust: Trust;
}

type Reading = Series['readings'][number];

const numbersOf = (text: string): readonly number[] => (text.match(/\d+/g) ?? []).map(Number);

/** The value that is asked back: the sum of the GCS alone, since the parts were said before it. */
const askedText = (reading: Reading): string =>
  reading.vital === 'gcs' && reading.value.total !== undefined
    ? `${reading.value.total}`
    : reading.vital === 'pulse' && reading.value.rate !== undefined
      ? `${reading.value.rate}`
      : readingText(reading);

function ofReading(name: CriticalName, label: string, reading: Reading): CriticalValue {
  const text = askedText(reading);
  const shown = reading.vital === 'gcs' ? `GCS ${text}` : text;
  return {
    name,
    spoken: `${label} ${speak(shown).replace(/^GCS /, '')}`,
    numbers: numbersOf(text.replace(/\bby palpation\b/, '')),
    side: null,
    entries: [reading.id],
    trust: trustIn([reading]),
  };
}

const has = (reading: Reading): boolean => numbersOf(askedText(reading)).length > 0;

/** The last reading, and the lowest where that is another. */
function lastAndLowest(
  all: readonly Series[],
  vital: Vital,
  names: readonly [CriticalName, CriticalName],
  labels: readonly [string, string],
): readonly CriticalValue[] {
  const readings = all.find((one) => one.vital === vital)?.readings.filter(has) ?? [];
  const last = readings.at(-1);
  if (last === undefined) return [];
  const lowest = lowestOf(readings);
  const lower = lowest !== null && !isAlike(lowest.reading, last) ? [lowest] : [];
  return [
    ofReading(names[0], labels[0], last),
    ...lower.map(({ reading, sure }) =>
      ofReading(names[1], sure ? labels[1] : `${labels[1]} with a total`, reading),
    ),
  ];
}

const sitePhrase = (site: Site, side: Side | null): string =>
  side === null
    ? `${siteName(site)}${isPaired(site) ? ', side not said' : ''}`
    : side === 'both'
      ? `${siteName(site)} on both sides`
      : `${side} ${siteName(site)}`;

/** How it is said on the air that one was, or may have been, taken off: the surest word of it. */
function offWords(one: Tourniquet, day: Day): readonly string[] {
  const said = one.saidOff.find(({ how }) => how === 'off') ?? one.saidOff.at(-1);
  if (said === undefined) return [];
  const time = speak(clock(said.note.at, day));
  const words = { off: 'said off', which: 'unclear which was said off', whether: 'perhaps off' }[said.how];
  return [`${words} ${time}`];
}

/** `tourniquet right thigh, one three five one`: each with the first time said of it, and with when it was said off. */
function tourniquets({ entries, startedAt }: HandoffInput): readonly CriticalValue[] {
  const day = dayOf(startedAt);
  return tourniquetsIn(entries).map((one): CriticalValue => {
    const [entry] = one.entries;
    const where = entry.site === undefined ? '' : ` ${sitePhrase(entry.site, entry.side ?? null)}`;
    const off = offOf(one);
    const told = [...one.entries, ...one.saidOff.map(({ note }) => note)];
    return {
      name: 'tourniquet',
      spoken: [`tourniquet${where}`, speak(clock(entry.at, day)), ...offWords(one, day)].join(', '),
      numbers: [entry, ...(off === null ? [] : [off])].map(({ at }) =>
        Number(clock(at, day).slice(-5).replace(':', '')),
      ),
      side: entry.side ?? null,
      entries: told.map(({ id }) => id),
      trust: trustIn(told),
    };
  });
}

/**
 * Pressure with its lowest, GCS and pulse, which are lost most often (received of transmitted: low pressure 10 of 28,
 * GCS 10 of 22, pulse 13 of 49. Source: Carter AJE and others, Prehosp Emerg Care 2009;13(3):280-285, read); then what
 * the report may never lose: tourniquets with their times, and red criteria that are met.
 */
export function criticalValues(input: HandoffInput): readonly CriticalValue[] {
  const all = series(input.entries);
  const byId = new Map(input.entries.map((entry) => [entry.id, entry]));
  const red = metFlags(input, 'red').map((flag): CriticalValue => {
    const evidence = flag.evidence.flatMap((id) => byId.get(id) ?? []);
    return {
      name: 'red-criterion',
      spoken: speak(spokenCriterion(flag)),
      numbers: [],
      side: null,
      entries: flag.evidence,
      trust: trustIn(evidence),
    };
  });
  return [
    ...lastAndLowest(
      all,
      'blood-pressure',
      ['blood-pressure', 'lowest-pressure'],
      ['pressure', 'lowest pressure'],
    ),
    ...lastAndLowest(all, 'gcs', ['gcs', 'lowest-gcs'], ['GCS', 'lowest GCS']),
    ...lastAndLowest(all, 'pulse', ['pulse', 'pulse'], ['pulse', 'pulse']).slice(0, 1),
    ...tourniquets(input),
    ...red,
  ];
}
