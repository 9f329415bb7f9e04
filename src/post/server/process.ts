// Runs one messaging server as a child of the post: started anew when it dies, told to read its users again, and ended with it.

import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { createConnection } from 'node:net';

export interface ServerProcess {
  /** null while it is down */
  pid(): number | null;
  /** reads its configuration again: who was taken out of it is disconnected */
  reload(): void;
  /** resolves when it answers on its port; rejects with its last words where it gives up */
  ready(): Promise<void>;
  stop(): Promise<void>;
}

export interface ServerParts {
  readonly command: string;
  readonly config: string;
  /** where the server writes its process number, as its configuration says */
  readonly pidFile: string;
  readonly host: string;
  readonly port: number;
  /** start it again when it dies */
  readonly again: boolean;
}

const AGAIN = 500;
const READY_WITHIN = 20_000;
const END_WITHIN = 5_000;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const answers = (host: string, port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = createConnection({ host, port });
    const settle = (does: boolean): void => {
      resolve(does);
      socket.destroy();
    };
    socket.once('data', () => settle(true));
    socket.once('error', () => settle(false));
    socket.setTimeout(1_000, () => settle(false));
  });

const isAlive = (pid: number): boolean => {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
};

const commandOf = (pid: number): Promise<string> =>
  new Promise((resolve) => {
    execFile('ps', ['-o', 'args=', '-p', String(pid)], (error, text) => resolve(error === null ? text : ''));
  });

/**
 * Ends the server of this very configuration that outlived its post: a post that was killed could not take it along, and
 * a second one on the same folder would harm it.
 */
async function endOrphan(config: string, pidFile: string): Promise<void> {
  const pid = Number(await readFile(pidFile, 'utf8').catch(() => ''));
  if (!Number.isInteger(pid) || pid <= 1 || !(await commandOf(pid)).includes(config)) return;
  process.kill(pid, 'SIGTERM');
  for (let waited = 0; waited < END_WITHIN && isAlive(pid); waited += 50) await wait(50);
  if (isAlive(pid)) process.kill(pid, 'SIGKILL');
}

export function runServer({ command, config, pidFile, host, port, again }: ServerParts): ServerProcess {
  let child: ChildProcess | null = null;
  let over = false;
  let last = '';
  const start = (): void => {
    if (over) return;
    const made = spawn(command, ['-c', config], { stdio: ['ignore', 'ignore', 'pipe'] });
    child = made;
    made.stderr?.on('data', (piece) => {
      last = `${last}${piece}`.slice(-4_000);
    });
    made.on('error', () => undefined);
    made.on('close', () => {
      if (child === made) child = null;
      if (!over && again) setTimeout(start, AGAIN);
    });
  };
  const begun = endOrphan(config, pidFile).then(start);
  return {
    pid: () => child?.pid ?? null,
    reload: () => void child?.kill('SIGHUP'),
    ready: async () => {
      await begun;
      const until = Date.now() + READY_WITHIN;
      while (Date.now() < until) {
        if (child !== null && (await answers(host, port))) return;
        if (child === null && !again) break;
        await wait(100);
      }
      throw new Error(`the messaging server did not start:\n${last.trim().split('\n').slice(-6).join('\n')}`);
    },
    stop: async () => {
      over = true;
      await begun;
      const now = child;
      if (now === null) return;
      await new Promise<void>((resolve) => {
        now.once('close', () => resolve());
        now.kill('SIGTERM');
        setTimeout(() => now.kill('SIGKILL'), END_WITHIN).unref();
      });
    },
  };
}
