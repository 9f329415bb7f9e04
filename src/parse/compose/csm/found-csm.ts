// A check of circulation, sensation or motion in a clause before it becomes statements.

import type { Aspect, CsmStatement } from '../../../terms/index.ts';
import type { LimbEnd } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import type { Attachment } from '../sites/attach.ts';
import type { HowKnown } from '../talk.ts';

export interface FoundCsm extends Span {
  readonly piece: Piece;
  readonly aspects: readonly Aspect[];
  readonly ends: readonly LimbEnd[];
  /** null: named, and nothing said of it */
  readonly present: boolean | null;
  readonly endSpoken: boolean;
  /** item indexes of the site phrases it took */
  readonly group: Attachment;
  readonly details: Partial<CsmStatement>;
  readonly known: HowKnown;
  readonly doubt: readonly string[];
  readonly spans: readonly Span[];
  /** a refill time with no limb said or in mind is a vital sign */
  readonly refillSeconds: number | null;
  /** the first token of the negation that denies it */
  readonly negatedFrom: number | null;
  /** what is said of it stands before it ("good sensation", "no pulse") */
  readonly leads: boolean;
}

export interface ClauseCsm {
  readonly found: readonly FoundCsm[];
  /** item indexes of the site phrases that checks took */
  readonly usedSites: ReadonlySet<number>;
}
