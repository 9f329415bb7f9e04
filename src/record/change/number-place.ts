// Where a bare number goes in an entry: the statement with it, and the limit that it must keep.

import type { Statement } from '../../terms/index.ts';
import type { Limit } from './limits.ts';

export interface NumberPlace {
  readonly limit: Limit;
  /** the number in the record's unit */
  readonly value: number;
  /** true where only a whole number makes sense */
  readonly whole: boolean;
  readonly statement: Statement;
  /** what the bare number leaves open */
  readonly doubt?: string;
}
