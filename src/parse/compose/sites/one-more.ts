// "Cut above the eye and one on the chin": of what there is one more, the words before tell; a look alone would lose it.

import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Talk } from '../talk.ts';
import { isHeard } from '../unheard-denials.ts';

/** The pieces of a clause that name one more, with its place, and that no entry took. */
export function oneMore(talk: Talk, { pieces, mood }: Clause): readonly Piece[] {
  const site = pieces.findIndex(
    (piece, i) => piece.role === 'site' && !isHeard(talk, piece) && i > 1 && isMore(talk, pieces, i),
  );
  if (mood !== 'statement' || site < 0) return [];
  const from = pieces.slice(0, site).findLastIndex((piece) => MORE.test(talk.tokens[piece.from]?.word ?? ''));
  return pieces.slice(from, site + 1);
}

const MORE = /^(one|another|two|three|some|more|others)$/;

const isMore = ({ tokens }: Talk, pieces: readonly Piece[], site: number): boolean => {
  const from = pieces.slice(0, site).findLastIndex(({ from: at }) => MORE.test(tokens[at]?.word ?? ''));
  const between = pieces.slice(from + 1, site);
  return from > 0 && between.every(({ role }) => role === 'small' || role === 'side' || role === 'part');
};
