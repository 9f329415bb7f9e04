// "Pulse at two fifteen was ninety two": of the two numbers the first is when, and its words are no part of the sign's name.

import { tagOf } from '../islands/island.ts';
import { readTimes } from '../times/index.ts';
import type { Token } from '../token.ts';
import type { Piece } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such sign parted into its name and the time. */
export const withSignsAtTimes = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some(({ role }) => role === 'vital')
    ? pieces.flatMap((piece, i) => parted(pieces, i, tokens) ?? [piece])
    : pieces;

function parted(pieces: readonly Piece[], i: number, tokens: readonly Token[]): readonly Piece[] | null {
  const [piece, link, figure] = pieces.slice(i, i + 3);
  if (piece?.role !== 'vital' || link === undefined || figure?.role !== 'figure') return null;
  const island = piece.islands[0];
  const slot = island?.slots.at(-1);
  if (island === undefined || slot === undefined || slot.to !== piece.to || island.slots.length > 1)
    return null;
  const isLed = tokens[slot.from - 1]?.word === 'at' && slot.from - 1 > piece.from;
  const links = /^(was|is|were)$/.test(tokens[link.from]?.word ?? '') && tokens[piece.to - 1]?.pause === '';
  const words = tokens.map(({ word }) => word);
  const read = isLed && links ? readTimes(words, slot.from).find(({ end }) => end === slot.to) : undefined;
  if (read === undefined) return null;
  const name = {
    ...reread(piece, 'vital', island.rule, { vital: tagOf(island, 'vital') ?? '', heading: '' }),
    to: slot.from - 1,
  };
  const when = {
    file: 'times',
    rule: 'times.when',
    from: slot.from - 1,
    to: slot.to,
    cost: 0,
    tags: [{ key: 'when', value: '' }],
    slots: [{ rule: 'times.time', from: slot.from, to: slot.to, value: 0, time: read.time, loose: false }],
  };
  return [
    { ...name, islands: name.islands.map((one) => ({ ...one, slots: [] })) },
    { role: 'time', from: slot.from - 1, to: slot.to, islands: [when], weak: false },
  ];
}
