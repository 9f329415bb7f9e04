// Stretches of time in which the ear is deaf, and the silence that stands for what was recorded in them.

export interface Deafness {
  /** deaf from `from` (epoch ms) until `to`; null until its end is known */
  mark(from: number, to: number | null): void;
  /** the block that ended at `at`, silent where any of it was recorded in such a stretch */
  quieted(samples: Float32Array, at: number, rate: number): Float32Array;
}

/** Older stretches are forgotten: no block comes as late as this, ms. */
const KEPT = 120_000;

export function createDeafness(): Deafness {
  let stretches: readonly { readonly from: number; readonly to: number }[] = [];
  return {
    mark: (from, to) => {
      const others = stretches.filter((one) => one.from !== from && one.to > from - KEPT);
      stretches = [...others, { from, to: to ?? Number.POSITIVE_INFINITY }];
    },
    quieted: (samples, at, rate) => {
      const began = at - (samples.length / rate) * 1000;
      const isDeaf = stretches.some(({ from, to }) => began < to && at > from);
      return isDeaf ? new Float32Array(samples.length) : samples;
    },
  };
}
