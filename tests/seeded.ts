// Promises the same stream of random numbers for the same seed, on every machine, so that a failure can be had again.

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

/** Mulberry32: 32 bits of state, good enough for sampling and for nothing secret. From memory, by Tommy Ettinger, 2017. */
export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
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
