// The published limits by which a limb's check is called present or not.

/** Seconds: the recommended upper limit of normal. Schriger DL, Baraff L. Ann Emerg Med 1988;17:932-935. */
export const REFILL_LIMIT_SECONDS = 2;

/**
 * Grades of muscle power: 0 no contraction, 1 a flicker, 2 to 5 active movement. Source: Medical Research Council, Aids to the
 * Investigation of Peripheral Nerve Injuries, Memorandum No. 45, 1976 (read). What only flickers does not move.
 */
export const GRADES: readonly [least: number, most: number] = [0, 5];

/** The highest grade that is no movement. */
export const NO_MOVEMENT = 1;
