// "Pulse at two fifteen was ninety two", "sats at fourteen ten ninety one": of the two numbers the first is when, and its words are no
// part of the sign's name.

import { tagOf } from '../islands/island.ts';
import { readTimes, type SpokenTime } from '../times/index.ts';
import type { Token } from '../token.ts';
import { figureIn, marked, type Piece } from './piece.ts';
import { reread } from './reread.ts';
import { isClearlyParted } from './time-and-figure.ts';

/** The pieces with each such sign parted into its name, the time and the figure. */
export function withSignsAtTimes(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  if (!pieces.some(({ role }) => role === 'vital')) return pieces;
  const parted: Piece[] = [];
  for (let i = 0; i < pieces.length; ) {
    const [piece, sign] = [pieces[i], signAt(pieces, i, tokens)];
    if (piece !== undefined) parted.push(...(sign?.said ?? [piece]));
    i = sign?.next ?? i + 1;
  }
  return parted;
}

interface SignAtTime {
  readonly said: readonly Piece[];
  /** the first piece that was not taken */
  readonly next: number;
}

function signAt(pieces: readonly Piece[], i: number, tokens: readonly Token[]): SignAtTime | null {
  const piece = pieces[i];
  const island = piece?.role === 'vital' ? piece.islands[0] : undefined;
  const slot = island?.slots[0];
  if (piece === undefined || island === undefined || slot?.to !== piece.to) return null;
  if (tokens[slot.from - 1]?.word !== 'at' || slot.from - 1 <= piece.from) return null;
  for (const { end, time } of timesAt(tokens, slot.from)) {
    const next = pieces.findIndex(({ from }) => from === end);
    const value = next < 0 || end < piece.to ? null : valueAt(pieces, next, tokens);
    // Without a "was", "pulse at one ten, ninety" may be either.
    if (value === null || (value.length === 1 && end === piece.to)) continue;
    const [figure] = value.slice(-1);
    if (
      figure === undefined ||
      (value.length === 1 && !isClearlyParted(tokens, { from: slot.from, to: end }, figure))
    )
      continue;
    return {
      said: [nameOf(piece, slot.from - 1), whenOf(slot.from, end, time), ...value],
      next: next + value.length,
    };
  }
  return null;
}

/** The times that begin at `from` and have no pause within. */
const timesAt = (tokens: readonly Token[], from: number) =>
  readTimes(
    tokens.map(({ word }) => word),
    from,
  ).filter(({ end }) => tokens.slice(from, end).every(({ pause }) => pause === ''));

/** "(was) ninety", "one oh five": the pieces that give the figure, "was" included; null where none does. */
function valueAt(pieces: readonly Piece[], at: number, tokens: readonly Token[]): readonly Piece[] | null {
  const [first, second] = pieces.slice(at, at + 2);
  if (first === undefined) return null;
  const links = /^(was|is|were)$/.test(tokens[first.from]?.word ?? '');
  const figure = links ? second : first;
  if (figure === undefined || figureIn(figure) === null) return null;
  // So few words may be a time of day; behind a time they are no other.
  const isFigure = figure.role === 'figure' || (figure.role === 'time' && marked(figure, 'ago-only'));
  const value: Piece = { ...figure, role: 'figure' };
  return isFigure ? (links ? [first, value] : [value]) : null;
}

function nameOf(piece: Piece, to: number): Piece {
  const [island] = piece.islands;
  const tags = { vital: island === undefined ? '' : (tagOf(island, 'vital') ?? ''), heading: '' };
  const name = reread(piece, 'vital', island?.rule ?? '', tags);
  return { ...name, to, islands: name.islands.map((one) => ({ ...one, slots: [] })) };
}

const whenOf = (from: number, to: number, time: SpokenTime): Piece => ({
  role: 'time',
  from: from - 1,
  to,
  weak: false,
  islands: [
    {
      file: 'times',
      rule: 'times.when',
      from: from - 1,
      to,
      cost: 0,
      tags: [{ key: 'when', value: '' }],
      slots: [{ rule: 'times.time', from, to, value: 0, time, loose: false }],
    },
  ],
});
