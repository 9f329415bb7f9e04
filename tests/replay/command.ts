// Runs the command line: in a process of its own as a shell would, or, much faster, within the test.

import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { run } from '../../src/replay/run.ts';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const ARGUMENTS = ['--import', 'tsx', 'src/replay/main.ts'];
/** The quick way in, which runs the same from one bundled file. */
export const BUNDLED = ['src/replay/launch.mjs'];

export interface Ended {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The run's outcome; `input` is what stands on standard input. */
export function replay(
  words: readonly string[],
  input: string | Uint8Array = '',
  program: readonly string[] = ARGUMENTS,
): Ended {
  const { status, stdout, stderr } = spawnSync(process.execPath, [...program, ...words], {
    cwd: ROOT,
    input,
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, out: stdout.toString(), err: stderr.toString() };
}

/** A run whose output nobody reads to its end; resolves when it has ended. */
export function replayCutShort(words: readonly string[], input: string): Promise<Ended> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [...ARGUMENTS, ...words], { cwd: ROOT });
    let err = '';
    child.stderr.on('data', (chunk) => {
      err += chunk;
    });
    child.stdout.destroy();
    child.stdin.end(input);
    child.on('close', (status) => resolve({ status, out: '', err }));
  });
}

/** The same within this process, for all that does not hang on standard input or on how a process ends. */
export async function replayHere(words: readonly string[]): Promise<Ended> {
  const printed: string[] = [];
  const complaints: string[] = [];
  const status = await run(words, {
    otherwise: { startedAt: Date.UTC(2026, 4, 3, 20, 2, 0), zone: '-06:00' },
    print: (text) => printed.push(`${text}\n`),
    complain: (text) => complaints.push(`${text}\n`),
  });
  return { status, out: printed.join(''), err: complaints.join('') };
}
