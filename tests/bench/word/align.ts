// When a recording was at the microphone, by the page's clock: the levels that were stamped as the sound came are laid over
// the levels of the file until they fit.

/** A level as the tap tells it, wall clock in epoch ms. */
export interface Stamped {
  readonly from: number;
  readonly to: number;
  readonly rms: number;
}

/** Steps in which the place is sought, ms. */
const STEP = 4;
/** A fit that leaves more than this share of the power unexplained is none: sound was lost or came twice. */
const UNFIT = 0.05;

/** Sums of squares up to each sample, so that any stretch's level is one subtraction. */
export function powerOf(samples: Float32Array): Float64Array {
  const sums = new Float64Array(samples.length + 1);
  for (let at = 0; at < samples.length; at += 1)
    sums[at + 1] = (sums[at] ?? 0) + (samples[at] ?? 0) * (samples[at] ?? 0);
  return sums;
}

/** The level of the file from and to these ms; what lies outside is silence. */
function levelAt(sums: Float64Array, rate: number, from: number, to: number): number {
  const at = (ms: number): number =>
    sums[Math.max(0, Math.min(sums.length - 1, Math.round((ms / 1000) * rate)))] ?? 0;
  return Math.sqrt(Math.max(0, at(to) - at(from)) / (((to - from) / 1000) * rate));
}

/**
 * Epoch ms of the file's first sample as far as its stretch `from` to `to` (ms of the file) tells, sought within `reach` ms
 * around `guess`; null where nothing fits.
 */
export function beganAt(
  stamped: readonly Stamped[],
  { sums, rate }: { readonly sums: Float64Array; readonly rate: number },
  { from, to }: { readonly from: number; readonly to: number },
  guess: number,
  reach: number,
): number | null {
  let best = { origin: 0, wrong: Number.POSITIVE_INFINITY };
  for (let origin = guess - reach; origin <= guess + reach; origin += STEP) {
    let [wrong, all] = [0, 0];
    for (const one of stamped) {
      if (one.to < origin + from || one.from > origin + to) continue;
      const there = levelAt(sums, rate, one.from - origin, one.to - origin);
      wrong += (there - one.rms) ** 2;
      all += there ** 2;
    }
    const share = all === 0 ? Number.POSITIVE_INFINITY : wrong / all;
    if (share < best.wrong) best = { origin, wrong: share };
  }
  return best.wrong > UNFIT ? null : best.origin;
}
