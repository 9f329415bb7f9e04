// "Is it bleeding?" "No, it's just bumpy": where something that may be found was asked after, "no it's" takes nothing back. Its "no"
// answers, and what it is follows.

import type { Token } from '../token.ts';
import { marked, type Piece, readingOf } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with the "no" of each such answer parted from the words behind it; `open`: a question of an exam waits from before. */
export function withDenyingNo(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  open: boolean,
): readonly Piece[] {
  if (!pieces.some(isNoItIs)) return pieces;
  return pieces.flatMap((piece, i) =>
    isNoItIs(piece) && isOfBody(pieces[i + 1]) && isOpen(pieces.slice(0, i), open)
      ? parted(piece, tokens)
      : [piece],
  );
}

const isNoItIs = (piece: Piece): boolean =>
  piece.role === 'correction' && marked(piece, 'denies') && isLong(piece);

// "No it is", and not "I said".
const isLong = ({ from, to }: Piece): boolean => to - from === 3;

// A figure puts a sign right.
const isOfBody = (next: Piece | undefined): boolean =>
  next !== undefined &&
  next.role !== 'figure' &&
  next.role !== 'vital' &&
  next.role !== 'time' &&
  next.role !== 'care';

/** True where a question of the exam is the last thing before. */
function isOpen(before: readonly Piece[], open: boolean): boolean {
  const asked = before.findLastIndex(({ role }) => role === 'asking' || role === 'ask');
  if (before.some((piece) => piece.role === 'answer' && before.indexOf(piece) > asked)) return false;
  if (asked < 0) return open && before.every(({ role }) => role === 'talk' || role === 'small');
  const said = before.slice(asked);
  return said.some((piece) => piece.role === 'finding' || readingOf(piece, 'csm') !== null);
}

function parted(piece: Piece, tokens: readonly Token[]): readonly Piece[] {
  const at = piece.from + 1;
  if (tokens[piece.from]?.word !== 'no') return [piece];
  return [
    { ...reread(piece, 'answer', 'talk.answer', { answer: 'no', plain: '' }), to: at, weak: true },
    { ...reread(piece, 'small', 'small.small', { small: 'link' }), from: at, weak: false },
  ];
}
