// How well the bundled recogniser hears synthetic voices, clean and in wind. Voices made by a machine are clearer than a
// responder's on a hill: these figures compare builds and promise nothing about people.
//
//   npm run bench:hearing                                                 everything; an hour or so on two processors
//   npm run bench:hearing -- --voice rms --wind none --set tuning --some 30 --words

import { createWriteStream, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { hearingSetup } from '../../../src/replay/hearing-setup.ts';
import { loadModule } from '../../../src/speech/file/load-module.ts';
import { openHearing } from '../../../src/speech/index.ts';
import { REPORT_EXAM, REPORT_ORDINARY } from './report-set.ts';
import { bench, type Condition } from './sentence.ts';
import { HEADINGS, rowOf } from './sum.ts';
import { TUNING_EXAM, TUNING_ORDINARY } from './tuning-set.ts';
import { VOICES, voicesHere } from './voices.ts';

const { values } = parseArgs({
  options: {
    voice: { type: 'string' },
    wind: { type: 'string' },
    set: { type: 'string' },
    some: { type: 'string' },
    part: { type: 'string' },
    words: { type: 'boolean', default: false },
    log: { type: 'string' },
    write: { type: 'boolean', default: false },
  },
});
const SETS: Readonly<Record<string, readonly [readonly string[], readonly string[]]>> = {
  tuning: [TUNING_EXAM, TUNING_ORDINARY],
  report: [REPORT_EXAM, REPORT_ORDINARY],
};

/** `count` of them, evenly from the whole, or all. */
const some = (all: readonly string[]): readonly string[] => {
  const count = Math.min(all.length, Number(values.some ?? all.length));
  return Array.from({ length: count }, (_, i) => all[Math.floor((i * all.length) / count)] ?? '');
};

const asked = values.voice?.split(',') ?? VOICES;
const voices = voicesHere(asked);
for (const voice of asked)
  if (!voices.includes(voice)) console.log(`${voice} is not installed here; left out`);
const winds = (values.wind ?? 'none,20,10').split(',').map((wind) => (wind === 'none' ? null : Number(wind)));
const { module, model } = await loadModule();
const hearing = openHearing({ module, model, files: hearingSetup().files });
if (hearing.kind === 'fault') throw new Error(hearing.why);
const log = values.log === undefined ? null : createWriteStream(values.log);

const rows: string[] = [HEADINGS];
console.log(HEADINGS);
for (const set of values.set?.split(',') ?? Object.keys(SETS))
  for (const wind of winds)
    for (const voice of voices) {
      const [exam, ordinary] = SETS[set] ?? [[], []];
      const condition: Condition = { voice, wind };
      const examined =
        values.part === 'ordinary' ? [] : some(exam).map((said) => bench(hearing, condition, said));
      const talked =
        values.part === 'exam' ? [] : some(ordinary).map((said) => bench(hearing, condition, said));
      const row = rowOf(set, condition, examined, talked);
      rows.push(row);
      console.log(row);
      for (const one of [...examined, ...talked]) {
        log?.write(`${JSON.stringify({ ...one, heard: one.heard })}\n`);
        if (!values.words) continue;
        const { score } = one;
        const remarks = [
          score.wrong ? 'WRONG' : '',
          score.invented ? 'INVENTED' : '',
          score.marked ? 'marked' : '',
        ].filter((remark) => remark !== '');
        const text = one.heard.map((heard) => heard.text).join(' | ');
        const isTalk = talked.includes(one);
        if (text !== one.said && !(isTalk && score.entries === 0))
          console.log(`  ${one.said}  →  ${text}  ${remarks.join(' ')}`);
      }
    }
hearing.close();
console.log(`memory of the compiled code: ${Math.round(module.HEAP8.length / 1e6)} MB`);
if (values.write) {
  const remark = `Written by \`npm run bench:hearing -- ${process.argv.slice(2).join(' ')}\`: ${values.some ?? 'all'} sentences of each set.`;
  const memory = `Memory of the compiled code, both decoders loaded: ${Math.round(module.HEAP8.length / 1e6)} MB.`;
  writeFileSync(
    new URL('tables.md', import.meta.url),
    `# Tables of the hearing\n\n${remark}\n\n${rows.join('\n')}\n\n${memory}\n`,
  );
}
log?.end();
