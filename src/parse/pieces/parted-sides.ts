// "Ribs tender on the left, and the right knee is swollen": past a pause, or with its own article before one place, the second
// side is that of what follows; "left and right wrist" are both.

import { hasTag } from '../islands/island.ts';
import type { Token } from '../token.ts';
import { type Piece, readingOf } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each "left and right" that is no pair parted in two sides, and the "and" left out. */
export const withPartedSides = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some(({ role, from, to }) => role === 'side' && to - from > 2)
    ? pieces.flatMap((piece, i) => parted(pieces, i, tokens) ?? [piece])
    : pieces;

function parted(pieces: readonly Piece[], i: number, tokens: readonly Token[]): readonly Piece[] | null {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece?.role !== 'side') return null;
  const and = tokens.findIndex(({ word }, at) => at > piece.from && at < piece.to - 1 && word === 'and');
  const [first, second] = [sideOf(tokens, piece.from, and), sideOf(tokens, and + 1, piece.to)];
  if (and < 0 || first === null || second === null || first === second) return null;
  const isPaused = tokens[and - 1]?.pause !== '' || tokens[and]?.pause !== '';
  const isLed = /^(on|in|at|to|down|over)$/.test(tokens[piece.from]?.word ?? '');
  const isNamed =
    /^(the|his|her|their|my|your)$/.test(tokens[and + 1]?.word ?? '') || isOfSite(pieces, i, tokens);
  const isOne = next !== undefined && tokens[piece.to - 1]?.pause === '' && isOneSite(next);
  // "On his right and his left forearm": what opens the breath has nothing before it to be the first side of.
  const before = pieces[i - 1];
  const isBehind = before !== undefined && tokens[before.to - 1]?.pause === '';
  if (!isPaused && !(isLed && isNamed && isOne && isBehind)) return null;
  return [
    half(piece, piece.from, and, first, 'sides.side-after'),
    half(piece, and + 1, piece.to, second, 'sides.side-before'),
  ];
}

// "Ribs tender on the left and right ankle swollen": the first side has its place already.
function isOfSite(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieces[k];
    if (piece === undefined || tokens[piece.to - 1]?.pause !== '') return false;
    if (piece.role === 'site') return true;
  }
  return false;
}

const isOneSite = (next: Piece): boolean => {
  const site = readingOf(next, 'sites');
  return site !== null && !hasTag(site, 'plural');
};

function sideOf(tokens: readonly Token[], from: number, to: number): 'left' | 'right' | null {
  const words = tokens.slice(from, to).map(({ word }) => word);
  if (words.includes('both')) return null;
  return words.includes('left') ? 'left' : words.includes('right') ? 'right' : null;
}

const half = (piece: Piece, from: number, to: number, side: 'left' | 'right', rule: string): Piece => ({
  ...reread(piece, 'side', rule, { side }),
  from,
  to,
  weak: false,
});
