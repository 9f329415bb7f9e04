// "No the bruise is on the right hip": a "no" before a thing that is named with its "the", and said to be, answers or takes back. It denies
// nothing: nobody says "no the bruise" of a bruise that is not there. Nor does one with a number of things past its pause: "no, four cuts".

import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { isSmall, marked, type Piece } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such "no" read as an answer and nothing else. */
export const withAnsweringNo = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) =>
    marked(piece, 'plain') &&
    piece.to - piece.from === 1 &&
    (isNamedNext(pieces.slice(i + 1, i + 4), tokens) || isCountedNext(pieces, i, tokens))
      ? {
          ...reread(piece, 'answer', 'talk.answer', { answer: 'no', plain: '', 'denies-nothing': '' }),
          weak: true,
        }
      : piece,
  );

const isCountedNext = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const [no, count, thing] = pieces.slice(i, i + 3);
  return (
    i === 0 &&
    no !== undefined &&
    isPaused(tokens, no) &&
    count?.role === 'figure' &&
    thing?.role === 'finding'
  );
};

const isNamedNext = ([the, thing, is]: readonly Piece[], tokens: readonly Token[]): boolean =>
  the !== undefined &&
  thing?.role === 'finding' &&
  is !== undefined &&
  saidIn(tokens, the.from, the.to) === 'the' &&
  isSmall(is, 'link') &&
  /^(is|was|are|were)$/.test(saidIn(tokens, is.from, is.to));
