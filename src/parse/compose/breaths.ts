// A clause cut into the stretches that are said in one breath.

import { isSmall, marked, type Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Talk } from './talk.ts';
import { isHeard } from './unheard-denials.ts';

/** The stretches of a clause between its pauses. */
export const breathsOf = ({ tokens }: Talk, pieces: readonly Piece[]): readonly (readonly Piece[])[] =>
  pieces.reduce<Piece[][]>(
    (parts, piece, i) => {
      const before = pieces[i - 1];
      const isCut = (before !== undefined && isPaused(tokens, before)) || marked(piece, 'contrast');
      if (isCut) parts.push([piece]);
      else parts.at(-1)?.push(piece);
      return parts;
    },
    [[]],
  );

/** The stretches between pauses and, where an entry was made of a stretch, those that an "and" parts. */
export const runsOf = (talk: Talk, pieces: readonly Piece[]): readonly (readonly Piece[])[] =>
  breathsOf(talk, pieces).flatMap((part) =>
    part.some((piece) => isHeard(talk, piece)) ? splitAtJoins(part) : [part],
  );

const splitAtJoins = (pieces: readonly Piece[]): readonly (readonly Piece[])[] =>
  pieces.reduce<Piece[][]>(
    (parts, piece) => {
      if (isSmall(piece, 'join') && !isSmall(piece, 'or')) parts.push([]);
      else parts.at(-1)?.push(piece);
      return parts;
    },
    [[]],
  );
