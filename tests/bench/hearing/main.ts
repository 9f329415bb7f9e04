// How well the bundled recogniser hears synthetic voices, clean and in wind. Voices made by a machine are clearer than a
// responder's on a hill: these figures compare builds and promise nothing about people.
//
//   npm run bench:hearing                                 everything; an hour or so on two processors; writes tables.md
//   npm run bench:hearing -- --voice rms --wind none --set tuning --some 30 --words           a part, with its words
//   npm run bench:hearing -- --voice rms,awb --rows FILE  a part of everything; its rows go to the end of FILE
//   npm run bench:hearing -- --join FILE,FILE             tables.md of such rows

import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { type PartAsked, type PartDone, runPart } from './part.ts';
import { TABLES, tablesOf } from './plan.ts';
import { runParts } from './run-parts.ts';
import type { Benched } from './sentence.ts';
import { HEADINGS } from './sum.ts';
import { VOICES, voicesHere } from './voices.ts';

const { values } = parseArgs({
  options: {
    voice: { type: 'string' },
    wind: { type: 'string' },
    set: { type: 'string' },
    some: { type: 'string' },
    part: { type: 'string' },
    lever: { type: 'string', default: 'as built' },
    words: { type: 'boolean', default: false },
    json: { type: 'boolean', default: false },
    log: { type: 'string' },
    rows: { type: 'string' },
    join: { type: 'string' },
  },
});
const TABLES_FILE = new URL('tables.md', import.meta.url);
const isWhole = [values.voice, values.wind, values.set, values.some, values.part].every(
  (given) => given === undefined,
);

/** The sentences that were heard otherwise than said, and ordinary ones that entered. */
function showWords(heard: readonly Benched[]): void {
  for (const { said, heard: utterances, score } of heard) {
    const text = utterances.map((one) => one.text).join(' | ');
    const remarks = [score.wrong && 'WRONG', score.invented && 'INVENTED', score.marked && 'marked'];
    const isRight = text === said || (score.slots === 0 && score.entries === 0);
    if (!isRight)
      console.log(`  ${said}  →  ${text}  ${remarks.filter((remark) => remark !== false).join(' ')}`);
  }
}

const readRows = (file: string): readonly PartDone[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as PartDone);

/** Parts of the whole plan, of the voices asked for, as programs beside each other. */
async function runPlan(): Promise<void> {
  const asked = TABLES.flatMap(({ parts }) => parts).filter(
    ({ voice }) => values.voice?.split(',').includes(voice) ?? true,
  );
  const here = new Set(voicesHere([...new Set(asked.map(({ voice }) => voice))]));
  const parts = asked.filter(({ voice }) => here.has(voice));
  if (parts.length < asked.length) console.log('Some voices are not installed here; they are left out.');
  const done: PartDone[] = [];
  console.log(HEADINGS);
  await runParts(parts, values.log, (part) => {
    done.push(part);
    if (values.rows !== undefined) appendFileSync(values.rows, `${JSON.stringify(part)}\n`);
    console.log(`${part.row} ${part.lever} (${done.length} of ${parts.length} parts)`);
  });
  if (values.rows === undefined) writeFileSync(TABLES_FILE, tablesOf(done));
}

/** One part after another in this program. */
async function runAsked(): Promise<void> {
  const voices = voicesHere(values.voice?.split(',') ?? VOICES);
  const winds = (values.wind ?? 'none,20,10')
    .split(',')
    .map((wind) => (wind === 'none' ? null : Number(wind)));
  const kind = values.part === 'exam' || values.part === 'ordinary' ? values.part : 'both';
  const some = Number(values.some ?? Number.MAX_SAFE_INTEGER);
  if (!values.json) console.log(HEADINGS);
  for (const set of (values.set ?? 'tuning,report').split(','))
    for (const wind of winds)
      for (const voice of voices) {
        const asked: PartAsked = { set, voice, wind, some, kind, lever: values.lever };
        const [part, heard] = await runPart(asked, values.log);
        if (values.rows !== undefined) appendFileSync(values.rows, `${JSON.stringify(part)}\n`);
        console.log(values.json ? JSON.stringify(part) : part.row);
        if (values.words) showWords(heard);
      }
}

if (values.join !== undefined) writeFileSync(TABLES_FILE, tablesOf(values.join.split(',').flatMap(readRows)));
else if (isWhole || (values.rows !== undefined && values.wind === undefined && values.set === undefined))
  await runPlan();
else await runAsked();
