// A whisper of noise under every sound, the same on every run: stillness without any, as in a recording that was cut or where
// the ear was deaf, is like nothing that the recogniser was made for, and spoils what it takes for the voice's average.

/** Full scale is 1; about 80 decibels under it, less than what a microphone adds by itself. */
const LOUDNESS = 1e-4;

/** Adds the noise to block after block. */
export function withFloor(): (block: Float32Array) => Float32Array {
  let seed = 1;
  return (block) =>
    block.map((sample) => {
      // A linear congruential generator (Numerical Recipes, 2nd ed., 7.1): good enough for noise.
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) | 0;
      return sample + (seed / 2 ** 31) * LOUDNESS * Math.sqrt(3);
    });
}
