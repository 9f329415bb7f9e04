// Runs so many invented hours at once in a process of its own, every utterance from talk to record by turns, then every
// report of each, and prints what it took as JSON.

import nlp from 'compromise/one';
import {
  fhirDocument,
  imistAmbo,
  mist,
  printedRecord,
  radio,
  sbar,
  soap,
  textOf,
} from '../../../src/handoff/index.ts';
import { beginExam, hearUtterance } from '../../../src/record/index.ts';
import { readTalk, type Talk } from '../../../src/record/talk/index.ts';
import { fhirInput } from '../../../src/replay/fhir-input.ts';
import { timelineText } from '../../../src/timeline/index.ts';
import { realReader } from '../../talk-case.ts';
import { hourOfTalk } from './talk.ts';

/** What one run took, in milliseconds for all exams together. */
export interface Hours {
  readonly exams: number;
  readonly utterances: number;
  readonly wordsMs: number;
  readonly recordMs: number;
  readonly reportsMs: number;
  /** the most that the process held, in megabytes */
  readonly peakMb: number;
  /** characters of all reports, so that none is left out unseen */
  readonly written: number;
}

const OTHERWISE = { startedAt: 0, zone: 'UTC' };

function talkOf(seed: number): Talk {
  const talk = readTalk(hourOfTalk(seed), OTHERWISE);
  if (talk.kind === 'error') throw new Error(`line ${talk.line} of the talk ${talk.why}`);
  return talk;
}

function timed(act: () => void): number {
  const start = performance.now();
  act();
  return performance.now() - start;
}

const reader = realReader();

function record(talks: readonly Talk[]) {
  const exams = talks.map(({ startedAt, zone }, at) =>
    beginExam(reader, { device: `bench-${at}`, startedAt, zone }),
  );
  const longest = Math.max(...talks.map(({ utterances }) => utterances.length));
  for (let turn = 0; turn < longest; turn++)
    for (const [at, { utterances }] of talks.entries()) {
      const [exam, utterance] = [exams[at], utterances[turn]];
      if (exam !== undefined && utterance !== undefined) exams[at] = hearUtterance(exam, reader, utterance);
    }
  return exams;
}

/** Scores, flags and coverage, and all that is made of them; gives how many characters were written. */
function reports(talk: Talk, exam: ReturnType<typeof record>[number]): number {
  const input = fhirInput(talk, exam);
  const orders = [soap, mist, imistAmbo, sbar].map((order) => textOf(order(input)));
  const radioed = radio(input).chunks.map(({ text }) => text);
  const made = [timelineText(input), ...orders, ...radioed];
  const printed = JSON.stringify(printedRecord(input)).length + JSON.stringify(fhirDocument(input)).length;
  return made.reduce((sum, text) => sum + text.length, printed);
}

const count = Number(process.argv[2] ?? 1);
// Another hour first, so that a run does not measure how fast the program warms up.
const warm = talkOf(1);
for (const exam of record([warm])) reports(warm, exam);

const talks = Array.from({ length: count }, (_, at) => talkOf(100 + at));
const wordsMs = timed(() => {
  for (const { utterances } of talks) for (const { text } of utterances) nlp.tokenize(text).docs;
});
let exams: ReturnType<typeof record> = [];
const recordMs = timed(() => {
  exams = record(talks);
});
let written = 0;
const reportsMs = timed(() => {
  for (const [at, talk] of talks.entries()) {
    const exam = exams[at];
    if (exam !== undefined) written += reports(talk, exam);
  }
});
const hours: Hours = {
  exams: count,
  utterances: talks.reduce((sum, { utterances }) => sum + utterances.length, 0),
  wordsMs,
  recordMs,
  reportsMs,
  peakMb: Math.round(process.resourceUsage().maxRSS / 1024),
  written,
};
console.log(JSON.stringify(hours));
