// "Chest pain started an hour ago": the pain is the chest's, and the onset begins after it.

import type { Island } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';

/** The pieces with an onset's "pain" made a finding where a site stands straight before it. */
export const splitOnset = (tokens: readonly Token[], pieces: readonly Piece[]): readonly Piece[] =>
  pieces.flatMap((piece, i): readonly Piece[] => {
    const [before, onset] = [pieces[i - 1], readingOf(piece, 'history.onset')];
    const isPain = onset !== null && tokens[piece.from]?.word === 'pain' && piece.to - piece.from > 1;
    if (!isPain || before?.role !== 'site' || isPaused(tokens, before)) return [piece];
    const middle = piece.from + 1;
    const rest = piece.islands.map((island) => ({ ...island, from: middle }));
    return [
      { role: 'finding', from: piece.from, to: middle, islands: [pain(piece.from)], weak: false },
      { ...piece, from: middle, islands: rest },
    ];
  });

const pain = (from: number): Island => ({
  file: 'findings',
  rule: 'findings.finding',
  from,
  to: from + 1,
  tags: [{ key: 'finding', value: 'pain' }],
  slots: [],
  cost: 0,
});
