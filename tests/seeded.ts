// Promises the same stream of random numbers for the same seed, on every machine, so that a failure can be had again.

import { randomFrom } from '../src/speech/network/random.ts';

export interface Chance {
  /** the next number, 0 up to but not 1 */
  readonly next: () => number;
  /** a whole number from `least` to `most`, both included */
  readonly whole: (least: number, most: number) => number;
  /** one of the items, all as likely; throws for an empty list */
  readonly pick: <T>(items: readonly T[]) => T;
  /** true in `share` of all cases */
  readonly maybe: (share: number) => boolean;
}

/** The stream of a seed. */
export function seeded(seed: number): Chance {
  const next = randomFrom(seed);
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    whole,
    pick: (items) => {
      if (items.length === 0) throw new Error('there is nothing to pick from');
      return items[whole(0, items.length - 1)] as (typeof items)[number];
    },
    maybe: (share) => next() < share,
  };
}
