// Time and chance as they are handed to the post, so that a test can hand in its own.

import { randomBytes } from 'node:crypto';

export interface Clock {
  /** epoch ms */
  readonly now: () => number;
  /** a short name that nothing else has, fit for a subject */
  readonly newName: () => string;
}

export const REAL_CLOCK: Clock = {
  now: () => Date.now(),
  newName: () => randomBytes(5).toString('hex'),
};
