// The shape of a pattern over time: its numbers, shown as a trend and never as a diagnosis.

import type { Entry } from '../../record/entry.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import type { Source } from '../source.ts';

export interface Pattern extends Reckoned {
  readonly pattern:
    | 'pulse-up-pressure-down'
    | 'pulse-pressure-widening'
    | 'gcs-falling'
    | 'cooling'
    | 'skin-cooling'
    | 'limb-pulse-lost'
    | 'limb-circulation-less';
  /** starts with `trend:` and gives the numbers */
  readonly text: string;
}

export const patternOf = (
  pattern: Pattern['pattern'],
  text: string,
  entries: readonly Entry[],
  source: Source,
  missing: readonly string[] = [],
): Pattern => ({ pattern, text: `trend: ${text}`, ...reckoned(entries, source, missing) });
