// The widest values a corrected number may have: not what is healthy, but what a living body or a monitor can give.

/**
 * Lowest and highest number that is believed, both included. Rates, saturation, coma and pain scales keep within the
 * limits that NEMSIS v3.5 sets for the same elements (rates 0 to 500 and 0 to 300, 0 to 100, 3 to 15, 0 to 10), rates
 * drawn narrower where a spoken slip is likelier than the value; the others are common practice, no source.
 */
export const LIMITS = {
  pulse: [0, 300],
  respirations: [0, 120],
  systolic: [20, 350],
  percent: [0, 100],
  celsius: [10, 46],
  mgPerDl: [5, 2000],
  pupilMm: [1, 10],
  orientation: [0, 4],
  gcs: [3, 15],
  score: [0, 10],
  refillSeconds: [0, 30],
  strength: [0, 5],
  centimetres: [0.1, 250],
  count: [1, 100],
  years: [0, 125],
  kg: [0.3, 650],
} as const satisfies Record<string, readonly [number, number]>;

export type Limit = keyof typeof LIMITS;

/** True where the number is within the widest limits for its kind. */
export function canBe(limit: Limit, value: number): boolean {
  const [low, high] = LIMITS[limit];
  return Number.isFinite(value) && value >= low && value <= high;
}
