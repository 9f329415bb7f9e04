// Whether the words of a history tell when: what puts a time right may be of it.

import { readNumbers } from '../numbers/index.ts';

const TELLS_TIME =
  /\b(ago|at|hours?|minutes?|noon|midday|midnight|yesterday|today|tonight|morning|night|\d+)\b/i;

/** True for words with one that leads to a time, and for those that begin with a number. */
export const tellsTime = (text: string): boolean =>
  TELLS_TIME.test(text) || readNumbers(text.toLowerCase().split(/[\s-]+/), 0).length > 0;
