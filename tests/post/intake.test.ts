// What comes to the post is written, whichever moment it comes in; and what does not come by itself is asked for.

import { afterEach, describe, expect, it, vi } from 'vitest';
import { createAccount, type KeptMessage, recordSubject, type Stream } from '../../src/link/index.ts';
import { createIntake } from '../../src/post/intake.ts';
import { unknown } from '../../src/post/known.ts';
import type { Logged, PostLog } from '../../src/post/log.ts';
import { startMending } from '../../src/post/mending.ts';

const INCIDENT = 'invented';
const message = (seq: number): KeptMessage => ({
  subject: recordSubject(INCIDENT, 'ada-1', seq),
  bytes: new Uint8Array(3),
  place: seq,
});

function fakeLog(): { readonly log: PostLog; readonly lines: Logged[] } {
  const lines: Logged[] = [];
  const log: PostLog = {
    torn: 0,
    unreadable: 0,
    size: () => 0,
    read: async () => null,
    close: async () => undefined,
    add: async (messages) => {
      lines.push(...messages);
      return { kind: 'added', spots: messages.map(() => ({ at: 0, length: 1 })) };
    },
  };
  return { log, lines };
}

describe('what comes to the post', () => {
  it('is written in whichever moment it comes, at the very end of a writing too', async () => {
    // So many steps of the event queue after the last batch was taken in.
    for (let steps = 0; steps < 12; steps += 1) {
      const { log, lines } = fakeLog();
      const intake = createIntake({
        log,
        written: new Set(),
        incident: INCIDENT,
        clock: () => 0,
        counts: { again: 0, foreign: 0, batches: 0 },
        wrote: async ([one]) => {
          if (one?.logged.place !== 1) return;
          const later = async (): Promise<void> => {
            for (let step = 0; step < steps; step += 1) await null;
            intake.take(message(2), 'm');
          };
          void later();
        },
      });
      intake.take(message(1), 'm');
      await new Promise((resolve) => setTimeout(resolve, 5));
      expect([steps, ...lines.map(({ place }) => place)]).toEqual([steps, 1, 2]);
      await intake.close();
    }
  });

  it('is written once, and what is of another incident not at all', async () => {
    const { log, lines } = fakeLog();
    const counts = { again: 0, foreign: 0, batches: 0 };
    const written = new Set([message(1).subject]);
    const intake = createIntake({
      log,
      written,
      incident: INCIDENT,
      clock: () => 0,
      counts,
      wrote: async () => undefined,
    });
    for (const seq of [1, 2, 2, 3]) intake.take(message(seq), 'm');
    intake.take({ ...message(4), subject: recordSubject('another', 'ada-1', 4) }, 'm');
    await intake.settled();
    expect(lines.map(({ place }) => place)).toEqual([2, 3]);
    expect(counts).toMatchObject({ again: 2, foreign: 1 });
  });
});

describe('what does not come', () => {
  afterEach(() => {
    vi.useRealTimers();
  });
  const scene = (has: readonly number[], made: number | null) => {
    vi.useFakeTimers();
    const asked: number[] = [];
    const took: number[] = [];
    const stream: Stream = {
      made: 'm',
      follow: () => () => undefined,
      find: async (subject) => {
        const seq = Number(subject.split('.')[3]);
        asked.push(seq);
        return has.includes(seq) ? message(seq) : null;
      },
    };
    const one = unknown(createAccount('h0'));
    one.made = made;
    const take = (seq: number): void => {
      one.account.take({ kind: 'message', seq, before: `h${seq - 1}`, hash: `h${seq}` });
    };
    const mending = startMending({
      incident: INCIDENT,
      known: new Map([['ada-1', one]]),
      streams: new Set([stream]),
      clock: Date.now,
      take: ({ subject, place }) => {
        expect(place).toBe(0);
        const seq = Number(subject.split('.')[3]);
        took.push(seq);
        take(seq);
      },
    });
    return { asked, took, take, mending };
  };

  it('between two messages is asked of the server', async () => {
    const { took, take, mending } = scene([1, 2, 3, 4], null);
    for (const seq of [1, 4]) take(seq);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(took).toEqual([2, 3]);
    mending.end();
  });

  it('after the last message is asked of the server too, where the phone says that it made more', async () => {
    const { took, asked, take, mending } = scene([1, 2, 3, 4, 5], 7);
    for (const seq of [1, 2]) take(seq);
    await vi.advanceTimersByTimeAsync(30_000);
    expect(took).toEqual([3, 4, 5]);
    // What only the phone has is asked for one at a time.
    expect(new Set(asked)).toEqual(new Set([3, 4, 5, 6]));
    mending.end();
  });

  it('is not asked for where nothing is known to be missing', async () => {
    const { asked, take, mending } = scene([1, 2, 3], 2);
    for (const seq of [1, 2]) take(seq);
    await vi.advanceTimersByTimeAsync(30_000);
    expect(asked).toEqual([]);
    mending.end();
  });
});
