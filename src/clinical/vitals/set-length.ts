// How far apart readings may be and still belong to one set of vitals.

/** Minutes from the first reading of a set to its last; common practice, no source. */
export const SET_MINUTES = 5;

/** Minutes that a pulse and a pressure may lie apart and still be read together; common practice, no source. */
export const PAIR_MINUTES = 10;
