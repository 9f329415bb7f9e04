// The headline of a radio report: red criteria, tourniquets, then the values that get lost, told once early and asked back
// at the end.

import { series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { capital } from '../sentences/list.ts';
import type { Trust } from '../sentences/trust.ts';
import { type CriticalValue, criticalValues } from './critical.ts';
import { bare, type RadioLine } from './line.ts';
import { speak } from './speak.ts';

/** Criteria in one line; more cannot be kept in mind until the end of it. */
const IN_A_LINE = 4;

const TRUSTS: readonly Trust[] = ['confirmed', 'in part', 'unconfirmed'];

const lineFor = (words: string, values: readonly CriticalValue[], trust: Trust): RadioLine => ({
  words,
  entries: [...new Set(values.flatMap(({ entries }) => entries))],
  trust,
});

function inLines<T>(items: readonly T[], most: number): readonly (readonly T[])[] {
  const lines: T[][] = [];
  for (const item of items) {
    const open = lines.at(-1);
    if (open === undefined || open.length === most) lines.push([item]);
    else open.push(item);
  }
  return lines;
}

/** `Red criteria: …, …`; confirmed ones apart from others. */
function redLines(values: readonly CriticalValue[]): readonly RadioLine[] {
  const red = values.filter(({ name }) => name === 'red-criterion');
  return TRUSTS.flatMap((trust) =>
    inLines(
      red.filter((one) => one.trust === trust),
      IN_A_LINE,
    ).map((some) => {
      const title = some.length === 1 ? 'Red criterion' : 'Red criteria';
      return lineFor(`${title}: ${some.map(({ spoken }) => spoken).join(', ')}`, some, trust);
    }),
  );
}

/** The parts of the GCS, where the sum does not tell them: 15 and 3 have one way each. */
function gcsParts(input: HandoffInput, value: CriticalValue): readonly RadioLine[] {
  const reading = series(input.entries)
    .find(({ vital }) => vital === 'gcs')
    ?.readings.find(({ id }) => value.entries.includes(id));
  if (reading?.vital !== 'gcs') return [];
  const { eye, verbal, motor, total } = reading.value;
  if (total === undefined || total === 15 || total === 3) return [];
  const parts = [
    eye === undefined ? [] : [`eye ${eye}`],
    verbal === undefined ? [] : [`verbal ${verbal}`],
    motor === undefined ? [] : [`motor ${motor}`],
  ].flat();
  return parts.length === 0 ? [] : [lineFor(speak(`GCS of ${parts.join(', ')}`), [value], value.trust)];
}

const isNumber = ({ name }: CriticalValue): boolean => name !== 'red-criterion' && name !== 'tourniquet';

const valueLine = (value: CriticalValue): RadioLine => lineFor(capital(value.spoken), [value], value.trust);

export interface Headline {
  readonly red: readonly RadioLine[];
  readonly tourniquets: readonly RadioLine[];
  readonly critical: readonly RadioLine[];
  /** `GCS of eye three, verbal four, motor six`, where the sum leaves them open */
  readonly gcsParts: readonly RadioLine[];
  /** the request, with the same values once more; nothing where there is none */
  readonly readBack: readonly RadioLine[];
}

export function headlineOf(input: HandoffInput): Headline {
  const values = criticalValues(input);
  const tourniquets = values.filter(({ name }) => name === 'tourniquet').map((value) => valueLine(value));
  const red = redLines(values);
  const asked = [...values.filter(isNumber).map((value) => valueLine(value)), ...tourniquets, ...red];
  return {
    red,
    tourniquets,
    critical: values.filter(isNumber).map((value) => valueLine(value)),
    gcsParts: values.filter(({ name }) => name === 'gcs').flatMap((value) => gcsParts(input, value)),
    readBack:
      asked.length === 0 ? [] : [bare('Read back:'), ...asked].map((one) => ({ ...one, block: 'read back' })),
  };
}
