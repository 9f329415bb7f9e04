// Simulated responders on the post's own WebSocket, each with an event a second, and how long each receipt took.

import type { EventText } from '../../../src/link/index.ts';
import {
  createMemoryLedger,
  importKey,
  inboxOf,
  type JoinCode,
  type Session,
  startSession,
} from '../../../src/link/index.ts';
import { dialPost } from '../../../src/link/page/index.ts';
import { inventedEvent } from '../../post/scene.ts';

export interface Responder {
  readonly code: JoinCode;
  readonly session: Session;
  readonly events: EventText[];
  /** ms from logging to the post's receipt, in the order of the events */
  readonly took: number[];
  log(): void;
}

/** One responder; `address` is where the post serves the page. */
export async function openResponder(code: JoinCode, address: string): Promise<Responder> {
  const events: EventText[] = [];
  const loggedAt: number[] = [];
  const took: number[] = [];
  const page = `page-${code.device}`;
  const facts = {
    id: `rec-${code.device}`,
    kind: 'live',
    title: '',
    startedAt: new Date().toISOString(),
  } as const;
  const session = await startSession({
    incident: code.incident,
    device: code.device,
    key: await importKey(code.key),
    line: dialPost(address, { seed: code.seed, inbox: inboxOf(code.device) }),
    ledger: createMemoryLedger(`install-${code.device}`),
    read: async () => ({ facts, events }),
    clock: Date.now,
  });
  session.watch(({ tally }) => {
    const now = performance.now();
    while (took.length < tally.atPost && took.length < loggedAt.length)
      took.push(now - (loggedAt[took.length] ?? now));
  });
  return {
    code,
    session,
    events,
    took,
    log: () => {
      const seq = events.length + 1;
      events.push(
        inventedEvent(
          page,
          seq,
          new Date().toISOString(),
          `invented remark ${seq}: left forearm swelling, no deformity`,
        ),
      );
      loggedAt.push(performance.now());
      session.offer(facts, events);
    },
  };
}

/** Each logs once a second from a moment of its own, for so many seconds. */
export async function talk(crowd: readonly Responder[], seconds: number): Promise<void> {
  const timers: NodeJS.Timeout[] = [];
  await Promise.all(
    crowd.map(
      (one, index) =>
        new Promise<void>((done) => {
          let left = seconds;
          setTimeout(
            () => {
              const timer = setInterval(() => {
                one.log();
                left -= 1;
                if (left > 0) return;
                clearInterval(timer);
                done();
              }, 1_000);
              timers.push(timer);
            },
            (index * 1_000) / crowd.length,
          );
        }),
    ),
  );
}

export const isDone = ({ session, events }: Responder): boolean => {
  const { tally } = session.state();
  return tally.made === events.length && tally.atPost === events.length;
};

/** Resolves when all is at the post; gives how many ms that took, or null after `within`. */
export async function untilDone(crowd: readonly Responder[], within: number): Promise<number | null> {
  const from = performance.now();
  while (performance.now() - from < within) {
    if (crowd.every(isDone)) return performance.now() - from;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return null;
}

export const percentile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
};
