// The signs that a receiver listens for are given, or are said not to be recorded.

import { type Entry, standing } from '../../record/entry.ts';
import type { Vital } from '../../terms/index.ts';
import { inOrder, series, vitalName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import type { Sentence } from '../text.ts';
import { burnedShare } from './burns.ts';
import { evidenceMark } from './flags.ts';
import { and } from './list.ts';

/** Signs whose absence from the record is worth a word; ATMIST names the vital signs and the GCS (RCEM Learning). */
const EXPECTED: readonly Vital[] = [
  'pulse',
  'respirations',
  'blood-pressure',
  'oxygen-saturation',
  'temperature',
  'gcs',
];

/** GCS keeps its capitals within a sentence. */
const lower = (vital: Vital): string => (vital === 'gcs' ? 'GCS' : vitalName(vital).toLowerCase());

/** `Not recorded: temperature and GCS.`, or nothing where all were taken. */
export function missingSigns(entries: readonly Entry[]): readonly Sentence[] {
  const taken = new Set(series(entries).map(({ vital }) => vital));
  const missing = EXPECTED.filter((vital) => !taken.has(vital));
  return missing.length === 0 ? [] : [{ text: `Not recorded: ${and(missing.map(lower))}.`, entries: [] }];
}

function latest(entries: readonly Entry[], vital: Vital): readonly string[] {
  const last = standing(inOrder(entries), 'vital').findLast((entry) => entry.vital === vital);
  return last === undefined ? [] : [last.id];
}

/** What was worked out from the signs, each with the readings it rests on; nothing where it could not be. */
export function scoreSentences(input: HandoffInput): readonly Sentence[] {
  const { entries, scores } = input;
  if (scores === undefined) return [];
  const pressure = latest(entries, 'blood-pressure');
  const onCard = (score: string, otherwise: readonly string[]): readonly string[] =>
    input.scoreCards?.find((card) => card.score === score)?.evidence ?? otherwise;
  const burns = burnedShare(input);
  const rows: readonly (readonly [string, readonly string[]] | null)[] = [
    scores.gcs === null ? null : [`GCS ${scores.gcs}`, onCard('gcs', latest(entries, 'gcs'))],
    scores.shockIndex === null
      ? null
      : [
          `Shock index ${scores.shockIndex}`,
          onCard('shock-index', [...latest(entries, 'pulse'), ...pressure]),
        ],
    scores.meanArterialPressure === null
      ? null
      : [
          `Mean arterial pressure ${scores.meanArterialPressure} mmHg`,
          onCard('mean-arterial-pressure', pressure),
        ],
    burns === null
      ? null
      : [
          `Burns ${burns.percent}% of the body's surface${burns.but === null ? '' : `, ${burns.but}`}`,
          burns.entries.map(({ id }) => id),
        ],
  ];
  return rows
    .filter((row) => row !== null)
    .map(([text, ids]) => ({ text: `Worked out: ${text}${evidenceMark(input, ids)}.`, entries: ids }));
}
