// "The left ear is swollen and cut the right ear is not": behind what was found a "cut" is one more, and the "the" opens the next place.
// "And cut the right sleeve" tells what is done.

import { saidIn, type Token } from '../token.ts';
import { isLikely, isSmall, marked, type Piece } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such "cut the" parted into a finding and an article. */
export const withCutAndNext = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some((piece) => isCutThe(piece, tokens))
    ? pieces.flatMap((piece, i) =>
        isCutThe(piece, tokens) &&
        ((isFoundHere(pieces, i) && opensPlace(pieces.slice(i + 1))) || isCutThatIs(pieces, i, tokens))
          ? parted(piece)
          : [piece],
      )
    : pieces;

const isCutThe = ({ role, from, to }: Piece, tokens: readonly Token[]): boolean =>
  role === 'talk' && /^cut (the|his|her|that|your)$/.test(saidIn(tokens, from, to));

// "Is swollen and cut", "is cut".
function isFoundHere(pieces: readonly Piece[], i: number): boolean {
  const [found, before] = [pieces[i - 2], pieces[i - 1]];
  if (before === undefined) return false;
  const isJoined = isSmall(before, 'join') && found?.role === 'finding' && isLikely(found, 'adj');
  return isJoined || (isSmall(before, 'link') && (found?.role === 'site' || found?.role === 'side'));
}

// "One cut that's on the palm", "a deep cut that is bleeding".
function isCutThatIs(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (before === undefined || piece === undefined || next === undefined) return false;
  const isThing = before.role === 'figure' || before.role === 'attribute' || isSmall(before, 'article');
  return isThing && tokens[piece.to - 1]?.word === 'that' && isSmall(next, 'link');
}

// "… right ear is", "… knee not", "… shin swollen".
function opensPlace(rest: readonly Piece[]): boolean {
  const at = rest.findIndex(({ role }) => role !== 'side' && role !== 'part');
  const next = rest[at + 1];
  return (
    rest[at]?.role === 'site' &&
    next !== undefined &&
    (isSmall(next, 'link') || marked(next, 'negation') || (next.role === 'finding' && isLikely(next, 'adj')))
  );
}

const parted = (piece: Piece): readonly Piece[] => [
  {
    ...reread(piece, 'finding', 'findings.finding', { finding: 'laceration', adj: '' }),
    to: piece.from + 1,
    weak: false,
  },
  { ...reread(piece, 'small', 'small.small', { small: 'article' }), from: piece.from + 1, weak: false },
];
