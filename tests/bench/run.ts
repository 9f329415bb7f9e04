// Runs what every *.bench.ts of this folder exports as `benches`, or those named, and prints what each costs beside another.

import { readdirSync } from 'node:fs';
import type { Bench } from './bench.ts';
import { tableOf } from './table.ts';

const HERE = new URL('./', import.meta.url);

/** The benchmarks a module offers; none where it offers none, which is said. */
function benchesOf(module: unknown): readonly Bench[] {
  const { benches } = module as { readonly benches?: readonly Bench[] };
  return benches ?? [];
}

const wanted = process.argv.slice(2);
const files = readdirSync(HERE)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)))
  .toSorted();

for (const file of files) {
  const benches = benchesOf(await import(new URL(file, HERE).href));
  if (benches.length === 0) console.log(`${file} exports no benches\n`);
  for (const bench of benches) console.log(`${tableOf(bench, await bench.run())}\n`);
}
if (files.length === 0) {
  console.error(`no benchmark begins with ${wanted.join(' or ')}`);
  process.exitCode = 2;
}
