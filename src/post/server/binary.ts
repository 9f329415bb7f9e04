// Finds the messaging server on this machine, and says in plain words what to install where it is missing or too old.

import { spawn } from 'node:child_process';

export type Found =
  | { readonly kind: 'found'; readonly command: string; readonly version: string }
  | { readonly kind: 'missing'; readonly why: string };

/** `discard_new_per_subject` came with 2.9.0; 2.9.10 of Debian 12 is what all of this was run with. */
const LEAST = [2, 9] as const;

export const HOW_TO_INSTALL = [
  'The post needs nats-server 2.9 or newer on this machine. It is free software; to install it:',
  '  Debian, Ubuntu:   sudo apt-get install nats-server',
  '                    (Debian may start a server of its own: sudo systemctl disable --now nats-server)',
  '  macOS:            brew install nats-server',
  '  others:           one file from https://github.com/nats-io/nats-server/releases, put on the PATH',
  'Where it lies elsewhere, name it: NATS_SERVER=/path/to/nats-server npm run post',
].join('\n');

const run = (command: string): Promise<string | null> =>
  new Promise((resolve) => {
    let text = '';
    const child = spawn(command, ['--version'], { stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.on('data', (piece) => (text += piece));
    child.stderr.on('data', (piece) => (text += piece));
    child.on('error', () => resolve(null));
    child.on('close', () => resolve(text));
  });

/** The server's command, or why none can be used. */
export async function findServer(command = process.env.NATS_SERVER ?? 'nats-server'): Promise<Found> {
  const said = await run(command);
  if (said === null)
    return { kind: 'missing', why: `There is no ${command} on this machine.\n${HOW_TO_INSTALL}` };
  const [, version = '', major = '0', minor = '0'] = /v?((\d+)\.(\d+)\.\d+)/.exec(said) ?? [];
  const isOld = Number(major) < LEAST[0] || (Number(major) === LEAST[0] && Number(minor) < LEAST[1]);
  if (version === '' || isOld)
    return {
      kind: 'missing',
      why: `${command} is version ${version === '' ? 'unknown' : version}.\n${HOW_TO_INSTALL}`,
    };
  return { kind: 'found', command, version };
}
