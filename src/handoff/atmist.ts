// The handover in the order Age, Time, Mechanism, Injuries, Signs, Treatment; what was not said is "not recorded".

import { type Day, dayOf, series } from '../timeline/index.ts';
import { incidentTime, mechanism, negatives, who } from './atmist-parts.ts';
import type { HandoffInput } from './input.ts';
import { opening } from './opening.ts';
import { problemSentences } from './problems.ts';
import { careSentences } from './sentences/care.ts';
import { csmSentences } from './sentences/csm.ts';
import { metFlags } from './sentences/flags.ts';
import { and } from './sentences/list.ts';
import { missingSigns } from './sentences/signs.ts';
import { placesIn } from './sentences/unexamined.ts';
import { shortSeries } from './sentences/vitals.ts';
import { type HandoffLine, type HandoffText, heading, line, plain, type Sentence } from './text.ts';

const part = (title: string, sentences: readonly Sentence[], none: string): readonly HandoffLine[] => [
  heading(title),
  ...(sentences.length === 0 ? [plain(none)] : sentences).map(line),
];

function injuries(input: HandoffInput, day: Day): readonly Sentence[] {
  const problems = problemSentences(input, day);
  const none = placesIn(input.coverage, 'not-examined');
  return [
    ...problems,
    ...negatives(input.entries, day, problems),
    ...csmSentences(input.entries, day, true),
    ...(none.length === 0 ? [] : [plain(`Not examined: ${and(none)}.`)]),
  ];
}

function signs(input: HandoffInput, day: Day): readonly Sentence[] {
  const red = metFlags(input, 'red').map(({ text, evidence }) => ({
    text: `Red criterion met: ${text}; local protocol decides.`,
    entries: evidence,
  }));
  return [
    ...series(input.entries).map((one) => shortSeries(one, day)),
    ...missingSigns(input.entries),
    ...red,
  ];
}

/**
 * The ATMIST handover. Source of the order: RCEM Learning, trauma pre-alerts (age; time of incident; mechanism;
 * injuries suspected; signs with vital signs and GCS; treatment).
 */
export function mist(input: HandoffInput): HandoffText {
  const day = dayOf(input.startedAt);
  return {
    lines: [
      ...opening('ATMIST', input),
      ...part('A  Age, sex, name', who(input.entries, day), 'Not recorded.'),
      ...part('T  Time of incident', incidentTime(input.entries, day), 'Not recorded.'),
      ...part('M  Mechanism', mechanism(input.entries, day), 'Not recorded.'),
      ...part('I  Injuries', injuries(input, day), 'Not recorded.'),
      ...part('S  Signs', signs(input, day), 'Not recorded.'),
      ...part('T  Treatment', careSentences(input.entries, day), 'Not recorded.'),
    ],
  };
}
