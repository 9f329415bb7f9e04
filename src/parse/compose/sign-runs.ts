// "At ten past pulse ninety, resps twenty, at twenty past pulse eighty": a time said before signs is that of each of them, up to the
// next time.

import type { Clause } from '../clauses/clause.ts';
import { isSmall, marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused, pauseAfter } from '../span.ts';
import type { Token } from '../token.ts';
import { isChatter } from './light.ts';
import type { Talk } from './talk.ts';

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history', 'unknown']);

/** The times of a clause that stand before the signs that they are said of. */
export function headsOf(
  pieces: readonly Piece[],
  times: readonly Piece[],
  tokens: readonly Token[],
): ReadonlySet<Piece> {
  const heads = new Set<Piece>();
  let [from, past] = [0, undefined as Piece | undefined];
  for (const time of times) {
    const at = pieces.indexOf(time);
    const before = pieces.slice(from, at);
    const isAfterHead = past !== undefined && heads.has(past);
    if (leadsToSign(pieces, at, tokens) && opens(before, isAfterHead, tokens)) heads.add(time);
    [from, past] = [at + 1, time];
  }
  return heads;
}

/**
 * True for "nineteen oh five pulse ninety": a time without a word that leads to it, at the head of a breath or behind a sign of such a
 * run, straight before a sign by its name.
 */
export function opensSigns({ tokens, context }: Talk, { pieces }: Clause, time: Piece): boolean {
  const at = pieces.indexOf(time);
  const next = pieces[at + 1];
  // "What's the pressure?" "Eleven fifteen, pulse ninety": a number may answer.
  const isAnswer = at === 0 && context.asked?.about === 'vital';
  const isCut = pauseAfter(tokens, time) !== '' && (at > 0 || pauseAfter(tokens, time) !== 'pause');
  if (next === undefined || isAnswer || isCut || !isNamed(next)) return false;
  const before = pieces.slice(0, at);
  if (before.every((piece) => isChatter(piece) || isPaused(tokens, piece))) return true;
  const first = before.findIndex(({ role }) => role === 'time');
  const isRun = first >= 0 && !before.slice(0, first).some(({ role }) => STATING.has(role));
  return isRun && before.at(-1)?.role === 'vital';
}

// "Pulse ninety", and no "ninety over sixty".
const isNamed = ({ role, from, islands: [island] }: Piece): boolean =>
  role === 'vital' && island !== undefined && island.slots[0]?.from !== from;

/** True for a sign, or a figure in the place of one. */
const isSign = ({ role, weak }: Piece): boolean => role === 'vital' || (role === 'figure' && !weak);

// "At ten past, pulse ninety", "at twenty past it was eighty"; "resps twenty at ten past, pulse ninety" closes what it is said of.
function leadsToSign(pieces: readonly Piece[], at: number, tokens: readonly Token[]): boolean {
  const [before, time] = [pieces[at - 1], pieces[at]];
  const next = pieces.slice(at + 1).find((piece) => !isLight(piece));
  if (time === undefined || next === undefined || !isSign(next)) return false;
  return !isPaused(tokens, time) || before === undefined || isPaused(tokens, before);
}

// Nothing but the name of a sign or of a set stands before it; or signs that have the time before them; or it goes on with an "and".
function opens(before: readonly Piece[], isAfterHead: boolean, tokens: readonly Token[]): boolean {
  const said = before.filter(({ role }) => STATING.has(role) || role === 'figure');
  const last = said.at(-1);
  if (said.every((piece) => piece.role === 'vital' && marked(piece, 'heading'))) return true;
  if (last === undefined || !isSign(last)) return false;
  return isAfterHead || joins(before, tokens);
}

const joins = (before: readonly Piece[], tokens: readonly Token[]): boolean => {
  const joint = before.at(-1);
  return joint !== undefined && (isSmall(joint, 'join') || tokens[joint.from]?.word === 'then');
};

const isLight = (piece: Piece): boolean => isChatter(piece) || piece.role === 'negation';
