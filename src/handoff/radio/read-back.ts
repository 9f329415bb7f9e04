// The end of a radio report asks for the values that get lost on the way to be read back.

import type { Vital } from '../../terms/index.ts';
import { readingText, type Series, series, vitalName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { evidenceMark, metFlags } from '../sentences/flags.ts';
import { markOf } from '../sentences/trust.ts';
import { extreme, numberOf } from '../sentences/vitals.ts';
import { plain, type Sentence } from '../text.ts';

/**
 * Pressure, GCS and pulse are lost most often: received of transmitted 10 of 28, 10 of 22 and 13 of 49.
 * Source: Carter AJE and others, Prehosp Emerg Care 2009;13(3):280-285 (read).
 */
const CRITICAL: readonly Vital[] = ['blood-pressure', 'gcs', 'pulse'];

type Reading = Series['readings'][number];

const value = (word: string, reading: Reading): Sentence => ({
  text: `${word} ${readingText(reading)}${markOf([reading])}.`,
  entries: [reading.id],
});

function valuesOf(vital: Vital, readings: readonly Reading[]): readonly Sentence[] {
  const last = readings.at(-1);
  if (last === undefined) return [];
  const lowest = vital === 'blood-pressure' ? extreme(readings, 1) : null;
  const low =
    lowest !== null && numberOf(lowest) !== numberOf(last) ? [value('Lowest pressure', lowest)] : [];
  return [value(vitalName(vital), last), ...low];
}

/** The critical values once more, with the request; nothing where there is none. */
export function readBack(input: HandoffInput): readonly Sentence[] {
  const signs = series(input.entries);
  const values = CRITICAL.flatMap((vital) =>
    valuesOf(vital, signs.find((one) => one.vital === vital)?.readings ?? []),
  );
  const red = metFlags(input, 'red').map(({ text, evidence }) => ({
    text: `Red criterion: ${text}${evidenceMark(input, evidence)}.`,
    entries: evidence,
  }));
  const all = [...values, ...red];
  return all.length === 0 ? [] : [plain('Read back the following.'), ...all];
}
