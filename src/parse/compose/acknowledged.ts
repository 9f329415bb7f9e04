// "On the left, yes." "On the left, okay.": who asked says the answer's side again, and calls nothing normal.

import type { Clause } from '../clauses/clause.ts';
import { marked, type Piece } from '../pieces/piece.ts';
import { saidIn } from '../token.ts';
import { sideIn } from './sites/side-in.ts';
import { place, type Talk } from './talk.ts';

/** Takes a side with an "okay" for the answer said again, where that side was just said to have something; false for others. */
export function acknowledges(talk: Talk, { pieces }: Clause): boolean {
  const { isSaidLast, asking, said } = talk.context;
  if (!isSaidLast || !asking) return false;
  const side = sideIn(pieces)?.side ?? null;
  const isThere = said.every((one) => one.kind === 'finding' && one.present && one.side === side);
  if (side === null || !isThere || said.length === 0) return false;
  const isAgain = pieces.every((piece) => PASSED.has(piece.role) || isOkay(talk, piece));
  if (!isAgain || !pieces.some((piece) => isOkay(talk, piece))) return false;
  place(talk, ...pieces);
  return true;
}

const PASSED: ReadonlySet<Piece['role']> = new Set(['side', 'small', 'talk', 'answer']);

const isOkay = ({ tokens }: Talk, piece: Piece): boolean =>
  piece.role === 'finding' &&
  piece.weak &&
  marked(piece, 'soft') &&
  /^(okay|ok|all right|alright|right|good)$/.test(saidIn(tokens, piece.from, piece.to));
