// Runs what every *.bench.ts of this folder exports as `benches`, or those named, and prints what each costs beside another.
// A whole run is kept in results.json; `--against FILE` compares with an earlier one and ends with 1 where a ratio grew.

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Bench, Row } from './bench.ts';
import { compared, comparisonOf, isWorse, type Results, resultsOf } from './results.ts';
import { tableOf } from './table.ts';

const HERE = new URL('./', import.meta.url);
const KEPT = new URL('results.json', HERE);

/** The benchmarks a module offers; none where it offers none, which is said. */
function benchesOf(module: unknown): readonly Bench[] {
  const { benches } = module as { readonly benches?: readonly Bench[] };
  return benches ?? [];
}

/** The words of the command line: which benchmarks, and what to compare with. */
function asked(words: readonly string[]): {
  readonly wanted: readonly string[];
  readonly against: string | null;
} {
  const at = words.indexOf('--against');
  if (at < 0) return { wanted: words, against: null };
  const file = words[at + 1];
  if (file === undefined) {
    console.error('--against needs a file: the results.json of an earlier run');
    process.exit(2);
  }
  return { wanted: words.filter((_, i) => i !== at && i !== at + 1), against: file };
}

/** An earlier run's results; a file that is none ends the run with one line. */
function earlier(file: string): Results {
  try {
    const read = JSON.parse(readFileSync(file, 'utf8')) as Partial<Results>;
    if (!Array.isArray(read.benches)) throw new Error('it has no "benches"');
    return read as Results;
  } catch (error) {
    console.error(`${file} is no results file: ${error instanceof Error ? error.message : String(error)}`);
    process.exit(2);
  }
}

const { wanted, against } = asked(process.argv.slice(2));
// Before anything is run and the file is written anew: it may be the same file.
const before = against === null ? null : earlier(against);
const files = readdirSync(HERE)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)))
  .toSorted();
if (files.length === 0) {
  console.error(`no benchmark begins with ${wanted.join(' or ')}`);
  process.exit(2);
}

const done: { bench: Bench; rows: readonly Row[] }[] = [];
for (const file of files) {
  const benches = benchesOf(await import(new URL(file, HERE).href));
  if (benches.length === 0) console.log(`${file} exports no benches\n`);
  for (const bench of benches) {
    const rows = await bench.run();
    done.push({ bench, rows });
    console.log(`${tableOf(bench, rows)}\n`);
  }
}
const now = resultsOf(done);
if (wanted.length === 0) {
  writeFileSync(KEPT, `${JSON.stringify(now, null, 2)}\n`);
  console.log(`kept in tests/bench/results.json (${now.machine})`);
}
if (before !== null) {
  const rows = compared(before, now);
  console.log(`against ${against}, of ${before.at} on ${before.machine}:\n${comparisonOf(rows)}`);
  if (rows.some(isWorse)) process.exitCode = 1;
}
