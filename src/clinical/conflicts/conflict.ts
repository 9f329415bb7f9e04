// The shape of a conflict or slip: the entries at odds and one short question that settles them.

import type { Entry } from '../../record/entry.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { COMMON_PRACTICE } from '../source.ts';

export interface Conflict extends Reckoned {
  readonly conflict:
    | 'opposite'
    | 'nothing-and-something'
    | 'side-jump'
    | 'not-equal'
    | 'far-from-last'
    | 'two-values-at-once'
    | 'unit'
    | 'sum'
    | 'time-far-back'
    | 'two-ages'
    | 'two-sexes'
    | 'amputated'
    | 'care-without-finding';
  readonly question: string;
}

export const conflictOf = (
  conflict: Conflict['conflict'],
  question: string,
  entries: readonly Entry[],
): Conflict => ({ conflict, question, ...reckoned(entries, COMMON_PRACTICE) });
