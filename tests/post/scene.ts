// A post on free ports in a folder of its own, and phones without a screen that keep and send invented events.

import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  createMemoryLedger,
  type EventText,
  importKey,
  inboxOf,
  type JoinCode,
  type Ledger,
  type Line,
  type Pace,
  type Session,
  type SessionState,
  startSession,
} from '../../src/link/index.ts';
import { dialServers } from '../../src/link/node/index.ts';
import { REAL_CLOCK } from '../../src/post/clock.ts';
import { type Ports, type Post, type PostOptions, startPost } from '../../src/post/post.ts';
import { findServer } from '../../src/post/server/binary.ts';
import type { RecordFacts } from '../../src/record/store/index.ts';

export const SERVER = await findServer();

/** Why these tests cannot run here, in one line; empty where they can. */
export const HINDRANCE =
  SERVER.kind === 'found' ? '' : 'skipped: no nats-server on this machine (apt-get install nats-server)';

const isFree = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, '127.0.0.1', () => server.close(() => resolve(true)));
  });

/**
 * Ports of a block that nobody uses now; servers of a cluster take the tens after them. They lie below those that the
 * system gives away by itself (Linux: from 32768), or a browser's own connection takes one before the server does.
 */
export async function freePorts(): Promise<Ports> {
  // Files that are tested side by side each draw from a range of their own.
  const own = 10_000 + (Number(process.env.VITEST_POOL_ID ?? 0) % 10) * 2_000;
  for (let tries = 0; tries < 50; tries += 1) {
    const base = own + Math.floor(Math.random() * 20) * 100;
    const all = [0, 1, 2, 3, 10, 11, 12, 13, 20, 21, 22, 23].map((offset) => base + offset);
    if ((await Promise.all(all.map(isFree))).every(Boolean))
      return { client: base, web: base + 1, leaf: base + 2, cluster: base + 3 };
  }
  throw new Error('no block of free ports was found in fifty tries');
}

export interface Scene {
  readonly folder: string;
  readonly ports: Ports;
  post: Post;
  /** ends the post and begins it again on what lies in its folder */
  again(options?: Partial<PostOptions>): Promise<Post>;
  end(): Promise<void>;
}

export async function openScene(options: Partial<PostOptions> = {}): Promise<Scene> {
  if (SERVER.kind !== 'found') throw new Error(HINDRANCE);
  const folder = options.folder ?? mkdtempSync(join(tmpdir(), 'fieldsay-post-'));
  const ports = options.ports ?? (await freePorts());
  const { command } = SERVER;
  const all: PostOptions = {
    folder,
    ports,
    command,
    servers: 1,
    address: 'https://post.invalid/',
    clock: REAL_CLOCK,
    ...options,
  };
  const scene: Scene = {
    folder,
    ports,
    post: await startPost(all),
    again: async (more = {}) => {
      await scene.post.stop();
      scene.post = await startPost({ ...all, ...more });
      return scene.post;
    },
    end: async () => {
      await scene.post.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
  return scene;
}

export interface Phone {
  readonly code: JoinCode;
  readonly session: Session;
  readonly line: Line;
  readonly facts: RecordFacts;
  readonly events: EventText[];
  readonly ledger: Ledger;
  /** logs one more invented event and offers it */
  log(words?: string): void;
  /** resolves when the state is so; rejects with the state after a while */
  until(so: (state: SessionState) => boolean, withinMs?: number): Promise<SessionState>;
  end(): Promise<void>;
}

export interface PhoneOptions {
  readonly record?: string;
  readonly line?: Line;
  readonly ledger?: Ledger;
  readonly events?: EventText[];
  /** how far the phone's clock is ahead, ms */
  readonly ahead?: number;
  readonly pace?: Partial<Pace>;
  readonly install?: string;
  /** the name of its page in the record's events */
  readonly page?: string;
}

export const QUICK: Partial<Pace> = { hello: 1_000, patience: 2_000, again: 300 };

/** A line with the code's credential, over TCP. */
export const lineOf = ({ webPorts }: Pick<Post, 'webPorts'>, code: JoinCode): Line =>
  dialServers(
    webPorts.map((port) => `127.0.0.1:${port - 1}`),
    { seed: code.seed, inbox: inboxOf(code.device) },
  );

/** Resolves once the line is connected. */
export const connected = (line: Line): Promise<void> =>
  new Promise((resolve) => {
    const stop = line.watch(({ state }) => {
      if (state !== 'connected') return;
      queueMicrotask(() => stop());
      resolve();
    });
  });

/** A phone with the code, on TCP where no line is handed in. */
export async function openPhone(
  post: Pick<Post, 'webPorts'>,
  code: JoinCode,
  options: PhoneOptions = {},
): Promise<Phone> {
  const line = options.line ?? lineOf(post, code);
  const clock = (): number => Date.now() + (options.ahead ?? 0);
  const record = options.record ?? `rec-${code.device}`;
  const startedAt = new Date(clock()).toISOString();
  const facts: RecordFacts = { id: record, kind: 'live', title: '', startedAt };
  const events = options.events ?? [];
  const ledger = options.ledger ?? createMemoryLedger(options.install ?? `install-${code.device}`);
  const session = await startSession({
    incident: code.incident,
    device: code.device,
    key: await importKey(code.key),
    line,
    ledger,
    read: async (id) => (id === record ? { facts, events } : null),
    clock,
    pace: options.pace ?? QUICK,
  });
  const page = options.page ?? `page-${code.device}`;
  const own = (): number => events.filter(({ device }) => device === page).length;
  const phone: Phone = {
    code,
    session,
    line,
    facts,
    events,
    ledger,
    log: (words) => {
      events.push(inventedEvent(page, own() + 1, new Date(clock()).toISOString(), words));
      session.offer(facts, events);
    },
    until: async (so, within = 20_000) => {
      // What was logged just now is in the book first.
      await session.settled();
      return new Promise((resolve, reject) => {
        const late = setTimeout(() => {
          stop();
          reject(new Error(`still ${JSON.stringify(session.state())}`));
        }, within);
        const stop = session.watch((state) => {
          if (!so(state)) return;
          clearTimeout(late);
          queueMicrotask(() => stop());
          resolve(state);
        });
      });
    },
    end: () => session.end(),
  };
  return phone;
}

/** An event of an invented record: it begins, then somebody says something. */
export function inventedEvent(device: string, seq: number, time: string, words = `remark ${seq}`): EventText {
  const facts = { format: 2, id: `${device}-${seq}`, device, seq, time };
  const event =
    seq === 1
      ? { ...facts, kind: 'started', payload: { startedAt: time, zone: 'UTC' } }
      : { ...facts, kind: 'utterance', payload: { text: words, heardAt: time, zone: 'UTC' } };
  return event;
}

export const allAtPost = ({ tally }: SessionState): boolean => tally.made > 0 && tally.atPost === tally.made;
