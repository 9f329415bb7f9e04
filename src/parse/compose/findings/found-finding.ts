// A finding of a clause before it becomes a statement: where it is, whether it is there, and the words that say so.

import type { Finding } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import type { Polarity, Reach } from '../negations/reach.ts';
import type { Attributes } from './attributes.ts';

export interface FoundFinding extends Span {
  readonly piece: Piece;
  readonly findings: readonly Finding[];
  readonly refs: readonly SiteRef[];
  /** where the site was said in this clause */
  readonly siteSpoken: boolean;
  /** where the finding names its own site ("tracheal deviation") */
  readonly atHome: boolean;
  /** where a side was said apart from the site */
  readonly sideSpoken: boolean;
  readonly polarity: Polarity;
  readonly present: boolean;
  readonly attributes: Attributes;
  /** pieces of the clause that it took in */
  readonly spans: readonly Span[];
  readonly doubt: readonly string[];
}

export interface ClauseFindings {
  readonly found: readonly FoundFinding[];
  /** item indexes of the site phrases that findings took */
  readonly usedSites: ReadonlySet<number>;
  readonly reach: Reach;
}
