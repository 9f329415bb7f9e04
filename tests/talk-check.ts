// Shows which cases of a gold set fail, with the entries that came: npx tsx tests/talk-check.ts tests/talk/tuning.jsonl
// Of the report set it shows what failing cases are about and no words, so that nobody tunes the grammar to them.

import type { Entry } from '../src/record/index.ts';
import { casesOf, figuresOf, figuresText, type Judged, runGold } from './gold-run.ts';
import { realReader } from './talk-case.ts';

const FACTS = new Set(['id', 'heardAt', 'heard', 'state', 'replacedBy']);

const brief = (entry: Entry): string =>
  `${entry.state.padEnd(9)} ${JSON.stringify(entry, (key, value) => (FACTS.has(key) ? undefined : value))} ← ${entry.heard}`;

function show({ gold, entries, missing, unwanted }: Judged): string {
  return [
    `\n${gold.id} (${gold.about})`,
    ...gold.talk.map((line) => `  said      ${line}`),
    ...missing.map((wanted) => `  missing   ${JSON.stringify(wanted)}`),
    ...unwanted.map((it) => `  forbidden ${JSON.stringify(it)}`),
    ...entries.map((entry) => `  ${brief(entry)}`),
  ].join('\n');
}

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error('usage: npx tsx tests/talk-check.ts FILE.jsonl…');
  process.exitCode = 2;
}
const reader = realReader();
for (const file of files) {
  const judged = runGold(reader, casesOf(file));
  const hidden = file.includes('report');
  for (const one of judged) if (!one.passed && !hidden) console.log(show(one));
  const abouts = [...new Set(judged.map(({ gold }) => gold.about))].toSorted();
  console.log();
  for (const about of abouts) {
    const some = judged.filter(({ gold }) => gold.about === about);
    const passed = some.filter((one) => one.passed).length;
    if (passed < some.length)
      console.log(`${String(passed).padStart(4)} of ${String(some.length).padStart(3)}  ${about}`);
  }
  console.log(figuresText(file, figuresOf(judged)));
}
