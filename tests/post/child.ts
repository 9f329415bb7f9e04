// The post as a process of its own, so that it can be killed.

import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type JoinCode, readJoinText } from '../../src/link/index.ts';
import type { Ports } from '../../src/post/post.ts';

const MAIN = fileURLToPath(new URL('../../src/post/main.ts', import.meta.url));

export interface PostChild {
  readonly process: ChildProcess;
  issue(name: string): Promise<JoinCode>;
  /** SIGKILL: nothing in it runs any more */
  kill(): Promise<void>;
  end(): Promise<void>;
}

export async function startChild(
  folder: string,
  ports: Ports,
  more: readonly string[] = [],
): Promise<PostChild> {
  const port = ports.client + 5;
  const numbers = ['--port', `${port}`, '--server-port', `${ports.client}`];
  const child = spawn(process.execPath, ['--import', 'tsx', MAIN, '--folder', folder, ...numbers, ...more], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (piece) => {
    said += piece;
    // A fault that was survived is worth a look all the same.
    process.stderr.write(`post: ${piece}`);
  });
  await new Promise<void>((resolve, reject) => {
    child.stdout.on('data', (piece) => {
      said += piece;
      if (said.includes('Ready on port')) resolve();
    });
    child.once('close', () => reject(new Error(`the post ended: ${said}`)));
  });
  const closed = new Promise<void>((resolve) => child.once('close', () => resolve()));
  return {
    process: child,
    issue: async (name) => {
      const { crewToken } = JSON.parse(readFileSync(join(folder, 'incident.json'), 'utf8'));
      const answer = await fetch(`http://localhost:${port}/crew/issue`, {
        method: 'POST',
        // On a busy machine the post ends a connection that was idle just as it is used again.
        headers: { authorization: `Bearer ${crewToken}`, connection: 'close' },
        body: JSON.stringify({ name }),
      });
      const { text } = (await answer.json()) as { text: string };
      const read = readJoinText(text);
      if (read.kind !== 'code') throw new Error(read.why);
      return read.code;
    },
    kill: async () => {
      child.kill('SIGKILL');
      await closed;
    },
    end: async () => {
      child.kill('SIGTERM');
      await closed;
    },
  };
}

/** The subjects that the post's log on the disk holds, in its order. */
export const subjectsIn = (folder: string): readonly string[] =>
  readFileSync(join(folder, 'log.ndjson'), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => (JSON.parse(line) as { s: string }).s);
