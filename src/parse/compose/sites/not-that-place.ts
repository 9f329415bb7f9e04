// "It's the left knee, not the right knee, that's swollen": the place behind the "not" is only told from the one that is meant.

import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';

/** The pieces less a "not" with its place between another place and what goes on to say how that one is. */
export function withoutContrasted(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const not = pieces.findIndex(({ to }) => tokens[to - 1]?.word === 'not');
  const before = pieces.slice(0, Math.max(not, 0));
  const place = pieces.findIndex(({ role }, k) => k > not && role === 'site');
  const next = pieces[place + 1];
  if (not < 1 || place < 0 || next === undefined || !namesAlone(before)) return pieces;
  if (!pieces.slice(not + 1, place).every((piece) => leadsTo(piece))) return pieces;
  // "That is", "which is", "is": what is said of the first place follows.
  if (!/^(that|which|is|are|was|were|hurts?|aches?|feels|looks)$/.test(tokens[next.from]?.word ?? ''))
    return pieces;
  const says = pieces.slice(place + 1).some(({ role }) => role === 'finding' || role === 'csm');
  return says ? [...before, ...pieces.slice(place + 1)] : pieces;
}

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'asking', 'talk']);

// A place and nothing that is said of it yet.
const namesAlone = (before: readonly Piece[]): boolean =>
  before.some(({ role }) => role === 'site') &&
  before.every((piece) => PLACES.has(piece.role) || marked(piece, 'negation', 'stop'));

const leadsTo = (piece: Piece): boolean =>
  piece.role === 'side' ||
  piece.role === 'part' ||
  isSmall(piece, 'article') ||
  isSmall(piece, 'preposition');
