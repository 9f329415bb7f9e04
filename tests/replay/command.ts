// Runs the command line as a person's shell would, in a process of its own.

import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const ARGUMENTS = ['--import', 'tsx', 'src/replay/main.ts'];

export interface Ended {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The run's outcome; `input` is what stands on standard input. */
export function replay(words: readonly string[], input: string | Uint8Array = ''): Ended {
  const { status, stdout, stderr } = spawnSync(process.execPath, [...ARGUMENTS, ...words], {
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
