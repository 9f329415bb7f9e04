// "At ten past pulse ninety, resps twenty, at twenty past pulse eighty": a time said before signs, and care among them, is that of
// each, up to the next time.

import type { Clause } from '../clauses/clause.ts';
import { figureIn, isSmall, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused, pauseAfter } from '../span.ts';
import type { Token } from '../token.ts';
import { isChatter } from './light.ts';
import type { Talk } from './talk.ts';

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history', 'unknown']);

/** The times of a clause that stand before what they are said of. */
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
    if (leadsOn({ pieces, times, tokens }, at) && opens({ pieces: before, times, tokens }, isAfterHead))
      heads.add(time);
    [from, past] = [at + 1, time];
  }
  return heads;
}

/**
 * True for "thirteen forty pulse ninety": a time without a word that leads to it, at the head of a breath or behind a sign of such a
 * run, straight before a sign by its name.
 */
export function opensSigns({ tokens, context, clauses }: Talk, clause: Clause, time: Piece): boolean {
  const { pieces } = clause;
  const at = pieces.indexOf(time);
  // "17:05: pulse ninety": past a colon the signs are a clause of their own.
  const behind = clauses[clauses.indexOf(clause) + 1];
  const before = pieces.slice(0, at);
  // "Right, 17:05: pulse ninety", "okay, fourteen ten, pulse ninety".
  const isHead = before.every((piece) => isChatter(piece) || isOkay(piece));
  if (isHead && at === pieces.length - 1 && clause.pause === 'dash' && behind?.pieces[0] !== undefined)
    return isNamed(behind.pieces[0]);
  const next = pieces[at + 1];
  // "What's the pressure?" "Eleven fifteen, pulse ninety": a number may answer.
  const isAnswer = isHead && context.asked?.about === 'vital';
  const isCut = pauseAfter(tokens, time) !== '' && (!isHead || pauseAfter(tokens, time) !== 'pause');
  if (next === undefined || isAnswer || isCut || !isNamed(next)) return false;
  if (isHead) return true;
  if (before.every((piece) => isChatter(piece) || isPaused(tokens, piece))) return true;
  const first = before.findIndex(({ role }) => role === 'time');
  const isRun = first >= 0 && !before.slice(0, first).some(({ role }) => STATING.has(role));
  return isRun && /^(vital|care)$/.test(before.at(-1)?.role ?? '');
}

const isOkay = (piece: Piece): boolean => piece.weak && readingOf(piece, 'talk') !== null;

// "Pulse ninety", and no "ninety over sixty".
const isNamed = ({ role, from, islands: [island] }: Piece): boolean =>
  role === 'vital' && island !== undefined && island.slots[0]?.from !== from;

interface Said {
  readonly pieces: readonly Piece[];
  /** the pieces that are times; "one ten" beside one of them is a figure */
  readonly times: readonly Piece[];
  readonly tokens: readonly Token[];
}

const isFigure = ({ times }: Said, piece: Piece): boolean =>
  (piece.role === 'figure' && !piece.weak) ||
  (piece.role === 'time' && !times.includes(piece) && figureIn(piece) !== null);

/** True for a sign, a figure in the place of one, and care: what is told in a run. */
const isOfRun = (said: Said, piece: Piece): boolean =>
  piece.role === 'vital' || piece.role === 'care' || isFigure(said, piece);

// "At ten past, pulse ninety", "at twenty past it was eighty"; "resps twenty at ten past, pulse ninety" closes what it is said of.
function leadsOn(said: Said, at: number): boolean {
  const [before, time] = [said.pieces[at - 1], said.pieces[at]];
  const next = said.pieces.slice(at + 1).find((piece) => !isLight(piece));
  if (time === undefined || next === undefined || !isOfRun(said, next)) return false;
  return !isPaused(said.tokens, time) || before === undefined || isPaused(said.tokens, before);
}

// Nothing but the name of a sign or of a set stands before it; or signs that have the time before them; or it goes on with an "and".
function opens(before: Said, isAfterHead: boolean): boolean {
  const said = before.pieces.filter(
    (piece) => (STATING.has(piece.role) && !isOkay(piece)) || isFigure(before, piece),
  );
  const last = said.at(-1);
  if (said.every((piece) => piece.role === 'vital' && marked(piece, 'heading'))) return true;
  if (last === undefined || !isOfRun(before, last)) return false;
  // "Pulse ninety, splint on at ten past" closes the care; where nothing else was said since the time before, that one is its own.
  const isClosing = last.role === 'care' && before.pieces.at(-1) === last && said.length > 1;
  return (isAfterHead && !isClosing) || joins(before);
}

const joins = ({ pieces, tokens }: Said): boolean => {
  const joint = pieces.at(-1);
  return joint !== undefined && (isSmall(joint, 'join') || tokens[joint.from]?.word === 'then');
};

const isLight = (piece: Piece): boolean => isChatter(piece) || piece.role === 'negation';
