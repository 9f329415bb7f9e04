// Turns sound of one sample rate into another by a windowed-sinc polyphase filter, block by block without seams.

export interface Resampler {
  /** the output that a block completes; the filter's delay is taken out, so times stay true */
  push(block: Float32Array): Float32Array;
  /** the last of the output */
  end(): Float32Array;
}

/** Zero crossings of the sinc on each side: with the window below, a stop band some 80 dB down. */
const CROSSINGS = 24;
/** Kaiser window's shape, for about 80 dB (J. F. Kaiser, "Nonrecursive digital filter design", 1974). */
const BETA = 7.857;
/** The pass band's end as a share of the lower of the two Nyquist rates; the rest is the filter's slope. */
const PASS = 0.91;

/** Modified Bessel function of the first kind, order zero, by its power series. */
function bessel0(x: number): number {
  let sum = 1;
  for (let k = 1, term = 1; term > sum * 1e-12; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

const sinc = (x: number): number => (x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x));
const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** Rates in samples a second, whole numbers. */
export function resampler(from: number, to: number): Resampler {
  if (from === to) return { push: (block) => block, end: () => new Float32Array(0) };
  const common = divisor(from, to);
  const [up, down] = [to / common, from / common];
  const cutoff = PASS * Math.min(1, to / from);
  const half = Math.ceil(CROSSINGS / cutoff);
  const width = 2 * half;
  const norm = bessel0(BETA);
  // A phase is a place of the output between two input samples; each is worked out when first needed.
  const phases: (Float64Array | undefined)[] = [];
  const phase = (number: number): Float64Array => {
    const known = phases[number];
    if (known !== undefined) return known;
    const taps = Float64Array.from({ length: width }, (_, tap) => {
      const x = tap - half + 1 - number / up;
      const across = 1 - (x / half) ** 2;
      return across <= 0 ? 0 : (cutoff * sinc(cutoff * x) * bessel0(BETA * Math.sqrt(across))) / norm;
    });
    const sum = taps.reduce((total, tap) => total + tap, 0);
    const made = taps.map((tap) => tap / sum);
    phases[number] = made;
    return made;
  };

  // `held` begins at input sample `first`; silence stands before the recording.
  let held: Float32Array = new Float32Array(half - 1);
  let first = -(half - 1);
  let made = 0;
  let taken = 0;

  function push(block: Float32Array, isEnd = false): Float32Array {
    const joined = new Float32Array(held.length + block.length);
    joined.set(held);
    joined.set(block, held.length);
    if (!isEnd) taken += block.length;
    const known = first + joined.length;
    const output: number[] = [];
    for (;;) {
      const whole = Math.floor((made * down) / up);
      if (whole + half >= known || (isEnd && whole >= taken)) break;
      const taps = phase((made * down) % up);
      const start = whole - half + 1 - first;
      let sum = 0;
      for (let tap = 0; tap < width; tap++) sum += (taps[tap] ?? 0) * (joined[start + tap] ?? 0);
      output.push(sum);
      made += 1;
    }
    const keepFrom = Math.max(first, Math.floor((made * down) / up) - half + 1);
    held = joined.slice(keepFrom - first);
    first = keepFrom;
    return Float32Array.from(output);
  }

  return { push: (block) => push(block), end: () => push(new Float32Array(half + 1), true) };
}
