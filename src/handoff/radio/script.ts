// A radio report that can be read aloud as it stands: who, the worst of it, then ATMIST, then what to read back.

import { type Entry, stands } from '../../record/entry.ts';
import { type Region, regionOf } from '../../terms/index.ts';
import { type Day, dayOf, series } from '../../timeline/index.ts';
import { incidentTime, mechanism, negatives, who } from '../atmist-parts.ts';
import type { HandoffInput } from '../input.ts';
import { problemSentences } from '../problems.ts';
import { careSentences } from '../sentences/care.ts';
import { csmSentences } from '../sentences/csm.ts';
import { evidenceMark, metFlags } from '../sentences/flags.ts';
import { and } from '../sentences/list.ts';
import { missingSigns } from '../sentences/signs.ts';
import { noneConfirmed } from '../sentences/trust.ts';
import { regionGaps } from '../sentences/unexamined.ts';
import { shortSeries } from '../sentences/vitals.ts';
import { plain, type Sentence } from '../text.ts';
import { type Chunk, chunks } from './chunks.ts';
import { readBack } from './read-back.ts';
import { speak } from './speak.ts';

/** Problems told in the headline; the others follow under injuries. */
const HEADLINE = 3;

/**
 * Regions whose negatives are always told, besides those where something was found; the other negatives are in the
 * written report, and the script says so. Common practice, no source.
 */
const ALWAYS_TOLD: readonly Region[] = ['neck', 'chest', 'abdomen', 'pelvis', 'back'];

function headline(input: HandoffInput, worst: readonly Sentence[]): readonly Sentence[] {
  const red = metFlags(input, 'red').map(({ text, evidence }) => ({
    text: `Red criterion met: ${text}${evidenceMark(input, evidence)}.`,
    entries: evidence,
  }));
  return [...(worst.length === 0 ? [plain('No present finding recorded.')] : worst), ...red];
}

function toldNegatives(input: HandoffInput, day: Day, problems: readonly Sentence[]): readonly Sentence[] {
  const findings = input.entries.filter((entry) => stands(entry) && entry.kind === 'finding');
  const found = new Set(
    findings.flatMap((entry) => (entry.kind === 'finding' && entry.present ? [regionOf(entry.site)] : [])),
  );
  const isTold = (entry: Entry): boolean =>
    entry.kind === 'finding' &&
    (found.has(regionOf(entry.site)) || ALWAYS_TOLD.includes(regionOf(entry.site)));
  const untold = findings.some((entry) => entry.kind === 'finding' && !entry.present && !isTold(entry));
  return [
    ...negatives(input.entries.filter(isTold), day, problems),
    ...(untold ? [plain('Other negatives are in the written report.')] : []),
  ];
}

function notExamined(input: HandoffInput): readonly Sentence[] {
  if (input.coverage.length === 0) return [plain('What was not examined was not worked out.')];
  const { none, part } = regionGaps(input.coverage);
  const halves = part.length === 0 ? [] : [`examined only in part: ${and(part)}`];
  if (none.length === 0 && part.length === 0) return [];
  return [
    plain(
      `${[none.length === 0 ? 'No region left out' : `Not examined: ${and(none)}`, ...halves].join('; ')}.`,
    ),
  ];
}

/** `Pulse one one two`, as it is said on the air: no pause between a sign and its value. */
const runOn = ({ text, entries }: Sentence): Sentence => ({
  text: text.replace(/^([^:,]+): /, '$1 '),
  entries,
});

function sentences(input: HandoffInput): readonly Sentence[] {
  const day = dayOf(input.startedAt);
  const problems = problemSentences(input, day);
  const others = problems.slice(HEADLINE);
  const care = careSentences(input.entries, day);
  return [
    ...(noneConfirmed(input.entries) ? [plain('Nothing in this report is confirmed.')] : []),
    ...who(input.entries, day),
    ...headline(input, problems.slice(0, HEADLINE)),
    ...incidentTime(input.entries, day),
    ...mechanism(input.entries, day),
    ...(others.length === 0 ? [] : [plain('Other injuries.'), ...others]),
    ...toldNegatives(input, day, problems),
    ...csmSentences(input.entries, day, true),
    ...notExamined(input),
    ...series(input.entries).map((one) => runOn(shortSeries(one, day))),
    ...missingSigns(input.entries),
    ...(care.length === 0 ? [plain('Treatment: not recorded.')] : care),
    ...readBack(input),
  ];
}

/** The script in pieces of at most 40 words, each but the last ending in "break" and the last in "over". */
export const radio = (input: HandoffInput): { readonly chunks: readonly Chunk[] } => ({
  chunks: chunks(sentences(input).map(({ text, entries }) => ({ text: speak(text), entries }))),
});
