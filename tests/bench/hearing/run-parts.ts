// Runs parts of the benchmark as programs of their own, as many beside each other as there are processors.

import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { PartAsked, PartDone } from './part.ts';

const PROGRAM = fileURLToPath(new URL('main.ts', import.meta.url));

/** The options of main.ts that ask for the part. */
export const optionsOf = ({ set, voice, wind, some, kind, lever }: PartAsked): readonly string[] => [
  ...['--set', set, '--voice', voice, '--wind', String(wind ?? 'none'), '--some', String(some)],
  ...['--part', kind, '--lever', lever],
];

/** Each part once; `come` is told of each that is done. A part that fails rejects with what it wrote last. */
export async function runParts(
  parts: readonly PartAsked[],
  log: string | undefined,
  come: (done: PartDone) => void,
): Promise<void> {
  const left = [...parts];
  const worker = async (): Promise<void> => {
    for (let part = left.shift(); part !== undefined; part = left.shift()) come(await child(part, log));
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
}

const child = (part: PartAsked, log: string | undefined): Promise<PartDone> =>
  new Promise((resolve, reject) => {
    const logging = log === undefined ? [] : ['--log', log];
    const words = ['--import', 'tsx', PROGRAM, ...optionsOf(part), ...logging, '--json'];
    const running = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
    let told = '';
    running.stdout.on('data', (bytes: Buffer) => {
      told += bytes.toString();
    });
    running.once('error', reject);
    running.once('close', (code) => {
      const last = told.trim().split('\n').at(-1) ?? '';
      if (code === 0) resolve(JSON.parse(last) as PartDone);
      else reject(new Error(`${optionsOf(part).join(' ')} ended with ${code}: ${last}`));
    });
  });
