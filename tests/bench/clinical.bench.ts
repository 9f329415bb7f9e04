// What one more entry in a long invented examination costs to reckon, beside what one sentence costs to parse.

import { readFileSync } from 'node:fs';
import { type Memo, reckon, reckonAfter } from '../../src/clinical/index.ts';
import { createReader } from '../../src/parse/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';
import {
  cared,
  clock,
  csm,
  denied,
  entry,
  found,
  gcs,
  minute,
  pressure,
  pulse,
  told,
} from '../clinical/build.ts';
import { type Bench, medianOf, type Row } from './bench.ts';
import { longExam } from './long-exam.ts';

const RUNS = 400;
const WARM_UP = 300;
const NOW = { now: clock(60) };
const at = { at: minute(60) };

const MORE: readonly (readonly [string, () => Entry])[] = [
  ['swelling denied', () => denied('knee', 'left', 'swelling', at)],
  ['a whole leg unremarkable', () => denied('leg', 'left', 'abnormality', at)],
  ['a deformity found', () => found('wrist', 'left', 'deformity', at)],
  ['motion of a foot intact', () => csm('foot', 'left', 'motion', true, at)],
  ['a pulse', () => pulse(99, 60)],
  ['a pressure', () => pressure(104, 70, 60)],
  ['a GCS', () => gcs(4, 5, 6, 60)],
  ['a medication told', () => told('medications', 'aspirin', undefined, at)],
  ['a splint', () => cared('splint', 'wrist', 'left', 60)],
  ['a note', () => entry({ kind: 'note', text: 'the dog ran off with a shoe' }, at)],
];

/** The sentences of an invented examination that is shipped as a demonstration. */
const sentences = (): readonly string[] =>
  readFileSync(new URL('../../public/demo/ridge-fall.talk', import.meta.url), 'utf8')
    .split('\n')
    .map((line) => line.replace(/^\[[^\]]*\]\s*/, '').trim())
    .filter((line) => line !== '' && !/^[#@]/.test(line));

/** Median cost of one sentence, each read in the context of those before it. */
function parsing(): number {
  const made = createReader(grammarFiles());
  if (made.kind === 'errors') throw new Error('the grammar has errors');
  const { reader } = made;
  const lines = sentences();
  let context = reader.begin();
  const say = (line: number): void => {
    if (line % lines.length === 0) context = reader.begin();
    const text = lines[line % lines.length] ?? '';
    context = reader.read({ text, heardAt: 0, zone: 'UTC' }, context).context;
  };
  for (let line = 0; line < lines.length * 5; line += 1) say(line);
  return medianOf(lines.length * 5, (run) => run, say);
}

function oneMore(base: readonly Entry[], memo: Memo, make: () => Entry): number {
  const work = (entries: readonly Entry[]): void => {
    reckonAfter(memo, entries, NOW);
  };
  for (let run = 0; run < WARM_UP; run += 1) work([...base, make()]);
  return medianOf(RUNS, () => [...base, make()], work);
}

const reckoning: Bench = {
  title: 'Reckoning after one more entry in a long examination, beside parsing one sentence',
  method: `${longExam().length} entries; median of ${RUNS} runs each, against the median sentence of a demonstration, in one run`,
  run: (): readonly Row[] => {
    const base = longExam();
    const { memo } = reckonAfter(null, base, NOW);
    for (let run = 0; run < 5; run += 1) for (const [, make] of MORE) oneMore(base, memo, make);
    const sentence = parsing();
    const row = (what: string, medianMs: number): Row => ({ what, medianMs, ratio: medianMs / sentence });
    const full = medianOf(
      50,
      () => base,
      (entries) => {
        reckon(entries, NOW);
      },
    );
    return [
      row('parsing one sentence', sentence),
      ...MORE.map(([what, make]) => row(what, oneMore(base, memo, make))),
      row(
        'nothing new, a minute later',
        medianOf(
          RUNS,
          () => base,
          (entries) => void reckonAfter(memo, entries, { now: clock(61) }),
        ),
      ),
      row('everything from nothing', full),
    ];
  },
};

export const benches: readonly Bench[] = [reckoning];
