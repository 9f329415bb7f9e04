// Runs one messaging server as a child of the post: started anew when it dies, told to read its users again, and ended with it.

import { type ChildProcess, spawn } from 'node:child_process';
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
  readonly host: string;
  readonly port: number;
  /** start it again when it dies */
  readonly again: boolean;
}

const AGAIN = 500;
const READY_WITHIN = 20_000;

const answers = (host: string, port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = createConnection({ host, port });
    socket.once('data', () => {
      resolve(true);
      socket.destroy();
    });
    socket.once('error', () => resolve(false));
    socket.setTimeout(1_000, () => {
      resolve(false);
      socket.destroy();
    });
  });

export function runServer({ command, config, host, port, again }: ServerParts): ServerProcess {
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
  start();
  return {
    pid: () => child?.pid ?? null,
    reload: () => void child?.kill('SIGHUP'),
    ready: async () => {
      const until = Date.now() + READY_WITHIN;
      while (Date.now() < until) {
        if (await answers(host, port)) return;
        if (child === null && !again) break;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error(`the messaging server did not start:\n${last.trim().split('\n').slice(-6).join('\n')}`);
    },
    stop: async () => {
      over = true;
      const now = child;
      if (now === null) return;
      await new Promise<void>((resolve) => {
        now.once('close', () => resolve());
        now.kill('SIGTERM');
        setTimeout(() => now.kill('SIGKILL'), 5_000).unref();
      });
    },
  };
}
