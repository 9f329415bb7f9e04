// The shape of one problem: what was found at one place, or what the responder added.

import type { Site } from '../../terms/index.ts';
import type { Reckoned } from '../evidence.ts';
import type { RowSide } from '../side.ts';

export interface Problem extends Reckoned {
  /** stays the same while the place has a finding: `left wrist`; the words of one that was added */
  readonly id: string;
  readonly text: string;
  /** 1 worst to 5; null for a problem that the responder added */
  readonly rank: number | null;
  readonly why: string;
  /** what to watch for; it has not happened */
  readonly watchFor: readonly string[];
  readonly by: 'findings' | 'responder';
  readonly struck: boolean;
}

/** What was found at one place, ranked as far as no triage criterion rests on it. */
export interface Found {
  readonly site: Site;
  readonly side: RowSide;
  /** ISO times at which its entries were said */
  readonly heardAt: readonly string[];
  /** of its gravest entry; lower is worse */
  readonly graveness: number;
  readonly problem: Problem;
}
