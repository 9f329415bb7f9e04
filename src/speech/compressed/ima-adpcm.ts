// Four bits a sample and back: IMA ADPCM, as in "Recommended Practices for Enhancing Digital Audio Compatibility in
// Multimedia Systems", revision 3.00 (Interactive Multimedia Association, 21 October 1992), section 6.

// Table 1 and table 2 of section 6.
const STEPS: readonly number[] = [
  7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60, 66, 73, 80, 88, 97,
  107, 118, 130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371, 408, 449, 494, 544, 598, 658, 724,
  796, 876, 963, 1060, 1166, 1282, 1411, 1552, 1707, 1878, 2066, 2272, 2499, 2749, 3024, 3327, 3660, 4026,
  4428, 4871, 5358, 5894, 6484, 7132, 7845, 8630, 9493, 10442, 11487, 12635, 13899, 15289, 16818, 18500,
  20350, 22385, 24623, 27086, 29794, 32767,
];
const MOVES: readonly number[] = [-1, -1, -1, -1, 2, 4, 6, 8];

/** What encoder and decoder carry from sample to sample. */
export interface Carried {
  /** the sample as it was decoded last, 16 bits */
  readonly sample: number;
  /** place in the table of steps, 0 to 88 */
  readonly index: number;
}

const held = (least: number, value: number, most: number): number => Math.min(most, Math.max(least, value));

/** The sample that four bits stand for, after what came before. */
export function decoded({ sample, index }: Carried, bits: number): Carried {
  const step = STEPS[index] ?? 7;
  const size = (step >> 3) + (bits & 4 ? step : 0) + (bits & 2 ? step >> 1 : 0) + (bits & 1 ? step >> 2 : 0);
  return {
    sample: held(-32_768, sample + (bits & 8 ? -size : size), 32_767),
    index: held(0, index + (MOVES[bits & 7] ?? 0), 88),
  };
}

/** The four bits that come nearest to a sample of 16 bits. */
export function encoded({ sample, index }: Carried, wanted: number): number {
  let step = STEPS[index] ?? 7;
  let rest = wanted - sample;
  let bits = 0;
  if (rest < 0) [bits, rest] = [8, -rest];
  for (const bit of [4, 2, 1]) {
    if (rest >= step) {
      bits |= bit;
      rest -= step;
    }
    step >>= 1;
  }
  return bits;
}
