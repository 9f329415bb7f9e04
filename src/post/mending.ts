// Asks the servers for what did not come by itself: gaps between messages, and what should have followed the last one.

import { type KeptMessage, recordSubject, type Stream } from '../link/index.ts';
import type { Known } from './known.ts';

export interface MendingParts {
  readonly incident: string;
  readonly known: ReadonlyMap<string, Known>;
  readonly streams: ReadonlySet<Stream>;
  /** epoch ms */
  readonly clock: () => number;
  readonly take: (message: KeptMessage, made: string) => void;
}

/** A gap that stays this long is asked for, ms; our choice, no source. */
const GAP_AGE = 3_000;
/** The same where the phone says that it made more and nothing comes; it may just not have sent it. */
const TAIL_AGE = 9_000;
/** So many numbers of one run at a time. */
const MOST = 100;

/** Since when a device has a gap, and since when nothing of it came. */
interface Watch {
  gap: number | null;
  readonly count: number;
  readonly since: number;
}

/** Looks every few seconds until it is ended. */
export function startMending(parts: MendingParts): { end(): void } {
  const { incident, known, streams, clock, take } = parts;
  const watches = new Map<string, Watch>();
  let looking = false;
  let over = false;

  /** True where any server has it. */
  const fetch = async (device: string, seq: number): Promise<boolean> => {
    for (const stream of streams) {
      const found = await stream.find(recordSubject(incident, device, seq));
      // Reading is not moved on by what was fetched out of turn.
      if (found === null) continue;
      take({ ...found, place: 0 }, stream.made);
      return true;
    }
    return false;
  };

  const watchOf = (device: string, count: number): Watch => {
    const before = watches.get(device);
    if (before?.count === count) return before;
    const now = { gap: before?.gap ?? null, count, since: clock() };
    watches.set(device, now);
    return now;
  };

  const lookAt = async (device: string, { account, made }: Known): Promise<void> => {
    const { missing, upTo, beyond, broken } = account.standing();
    const watch = watchOf(device, account.count());
    watch.gap = missing.length === 0 ? null : (watch.gap ?? clock());
    if (watch.gap !== null && clock() - watch.gap >= GAP_AGE)
      for (const [from, to] of missing.slice(0, 20))
        for (let seq = from; seq <= Math.min(to, from + MOST) && !over; seq += 1) await fetch(device, seq);
    // Behind a message that does not follow, all that comes is kept aside, and is here.
    if (made === null || broken !== null || clock() - watch.since < TAIL_AGE) return;
    const last = beyond.at(-1)?.[1] ?? upTo;
    for (let seq = last + 1; seq <= Math.min(made, last + MOST) && !over; seq += 1)
      if (!(await fetch(device, seq))) return;
  };

  const look = async (): Promise<void> => {
    if (looking) return;
    looking = true;
    try {
      for (const [device, one] of known) await lookAt(device, one);
    } finally {
      looking = false;
    }
  };
  const timer = setInterval(() => void look(), GAP_AGE);
  return {
    end: () => {
      over = true;
      clearInterval(timer);
    },
  };
}
