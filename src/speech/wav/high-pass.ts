// A fourth-order Butterworth high-pass that takes wind and handling noise from under a voice, block by block.

interface Section {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

/** Quality factors of the two sections of a fourth-order Butterworth filter: 1 / (2 cos(π/8)), 1 / (2 cos(3π/8)). */
const QUALITIES = [1 / (2 * Math.cos(Math.PI / 8)), 1 / (2 * Math.cos((3 * Math.PI) / 8))] as const;

/** A second-order section by the bilinear transform (R. Bristow-Johnson, "Audio EQ Cookbook", W3C Note, 2021). */
function section(quality: number, cutoff: number, rate: number): Section {
  const angle = (2 * Math.PI * cutoff) / rate;
  const [cos, alpha] = [Math.cos(angle), Math.sin(angle) / (2 * quality)];
  const a0 = 1 + alpha;
  const side = (1 + cos) / 2 / a0;
  return { b0: side, b1: -2 * side, b2: side, a1: (-2 * cos) / a0, a2: (1 - alpha) / a0 };
}

/** A filter that keeps its state between blocks; `cutoff` (3 dB down) and `rate` in hertz. */
export function highPass(cutoff: number, rate: number): (block: Float32Array) => Float32Array {
  const steps = QUALITIES.map((quality) => runner(section(quality, cutoff, rate)));
  return (block) => block.map((sample) => steps.reduce((value, step) => step(value), sample));
}

function runner({ b0, b1, b2, a1, a2 }: Section): (x: number) => number {
  let [s1, s2] = [0, 0];
  return (x) => {
    const y = b0 * x + s1;
    s1 = b1 * x - a1 * y + s2;
    s2 = b2 * x - a2 * y;
    return y;
  };
}
