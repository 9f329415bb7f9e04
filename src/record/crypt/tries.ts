// How long to wait after wrong passphrases: longer with each, and no shorter for a reload or a clock that was moved.

/** What is kept of wrong passphrases. */
export interface Tries {
  readonly wrong: number;
  /** epoch ms of the last one, by the wall clock */
  readonly last: number;
}

export const NO_TRIES: Tries = { wrong: 0, last: 0 };

/** The first ones are a slip of the finger. */
const FREE = 2;
const FIRST_WAIT = 5000;
const LONGEST_WAIT = 15 * 60_000;

const waitAfter = (wrong: number): number =>
  wrong <= FREE ? 0 : Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (wrong - FREE - 1));

/** The tries as seen at `now` (epoch ms): a clock that was set back since the last one starts its delay anew, once. */
export const seenAt = (tries: Tries, now: number): Tries => ({ ...tries, last: Math.min(tries.last, now) });

/**
 * Milliseconds still to wait at `now` (epoch ms). A clock set forward is believed: the delay only slows a hand at the
 * screen; against whoever takes the data away stand the rounds of the key.
 */
export function stillToWait(tries: Tries, now: number): number {
  const { wrong, last } = seenAt(tries, now);
  return Math.max(0, last + waitAfter(wrong) - now);
}
