// "Chest pain started an hour ago", "hip pain goes down the leg": the pain is of the place before it, and what is told of it
// begins after it.

import type { Island } from '../../islands/island.ts';
import { marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';

// What is told of a pain may begin with its name.
const TOLD = ['onset', 'radiation', 'time', 'provocation'] as const;

/** The pieces with the "pain" of what is told of it made a finding where a site stands straight before it. */
export const splitOnset = (tokens: readonly Token[], pieces: readonly Piece[]): readonly Piece[] =>
  pieces.flatMap((piece, i): readonly Piece[] => {
    const before = pieces[i - 1];
    const isTold =
      readingOf(piece, 'history') !== null && TOLD.some((topic) => marked(piece, 'topic', topic));
    const isPain = isTold && tokens[piece.from]?.word === 'pain' && piece.to - piece.from > 1;
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
