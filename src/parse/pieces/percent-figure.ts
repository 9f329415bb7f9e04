// "Sats eighty four, no, ninety four percent": behind a saturation so many percent are its figure, and no burnt skin.

import { hasTag } from '../islands/island.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { marked, type Piece, type Role } from './piece.ts';
import { reread } from './reread.ts';

const BETWEEN: ReadonlySet<Role> = new Set([
  'small',
  'talk',
  'answer',
  'negation',
  'correction',
  'time',
  'figure',
]);

/** The pieces with each such percentage read as a figure; `isOfSaturation` where one was the last thing said before. */
export function withPercentFigures(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  isOfSaturation: boolean,
): readonly Piece[] {
  if (!pieces.some((piece) => isPercent(piece))) return pieces;
  let isOpen = isOfSaturation;
  return pieces.map((piece, i) => {
    const isFigure = isOpen && isPercent(piece) && !isOfThing(piece, pieces[i + 1], tokens);
    if (piece.role === 'vital') isOpen = marked(piece, 'vital', 'oxygen-saturation');
    else if (!isFigure && !BETWEEN.has(piece.role)) isOpen = false;
    return isFigure ? figure(piece) : piece;
  });
}

const isPercent = ({ role, to, islands: [island] }: Piece): boolean =>
  role === 'attribute' &&
  island !== undefined &&
  hasTag(island, 'num', 'percent') &&
  // Its "percent" is all that follows the number: "of his body" tells of burns.
  island.slots[0]?.to === to - 1;

// "Ninety percent burns".
const isOfThing = (piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean =>
  next !== undefined && !isPaused(tokens, piece) && (next.role === 'finding' || next.role === 'site');

function figure(piece: Piece): Piece {
  const slots = piece.islands[0]?.slots ?? [];
  const read = reread(piece, 'figure', 'small.figure', { num: 'figure' });
  return { ...read, weak: false, islands: read.islands.map((island) => ({ ...island, slots })) };
}
