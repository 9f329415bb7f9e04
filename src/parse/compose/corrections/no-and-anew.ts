// "No, the left", "no, forty five", "no, one forty over ninety": a "no" with what should have been said takes back what was.

import type { Clause } from '../../clauses/clause.ts';
import { isNoAlone, placesAlone } from '../../clauses/moves-place.ts';
import { isNear, looksAgain } from '../../pieces/figure-anew.ts';
import { figureIn, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { isChatter } from '../light.ts';
import { sideIn } from '../sites/side-in.ts';
import type { Talk } from '../talk.ts';
import { correct } from './correction.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { mainOf } from './main-figure.ts';

/** Takes a "no" with nothing but a side or a figure after it for a correction. */
export function turnSide(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const [lead, ...behind] = clause.pieces;
  if (lead === undefined) return false;
  if (looksAgain(lead, talk.tokens) && isFigureNear(talk, behind)) return correct(talk, clause, stateAll);
  // "No, no, the right elbow": said twice it is one.
  const nos = clause.pieces.findIndex((piece) => !marked(piece, 'plain') && !isNoAlone(piece, talk.tokens));
  const start = Math.max(nos, 0) + callAt(talk, clause.pieces.slice(Math.max(nos, 0)));
  const [first, all] = [clause.pieces[start - 1], clause.pieces.slice(start)];
  if (first === undefined) return false;
  // "No, forearm, right forearm, can't count": what stands behind the place says nothing of it.
  const places = isPaused(talk.tokens, first) ? placesAlone(all, talk.tokens) : 0;
  if (places > 0 && isFoundLast(talk))
    return correct(talk, { ...clause, pieces: all.slice(0, places) }, stateAll);
  const rest = upToCall(talk, all);
  const turning = rest.filter(({ role, weak }) => role !== 'small' && (role !== 'talk' || !weak));
  const turned = { ...clause, pieces: rest };
  // "No, forty five": only a number stands against what was said.
  if (turning.length === 1 && turning[0]?.role === 'figure') return correct(talk, turned, stateAll);
  if (turning.length === 0 || !turning.every(isPlace) || sideIn(rest) === null) return false;
  // "No left forearm" takes nothing back unless a pause or an article parts the two.
  const parted = isPaused(talk.tokens, first);
  if (rest.length < all.length && !parted) return false;
  const article = rest[0] !== undefined && rest[0].to - rest[0].from > 1;
  return (parted || article) && correct(talk, turned, stateAll);
}

/**
 * Takes a "no" with nothing but the sign that was said last, read anew, for a correction: "no, one forty over ninety". Of several signs
 * said as one it is the one that is named.
 */
export function turnSign(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const [first, ...rest] = clause.pieces;
  const { said } = talk.context;
  if (first === undefined || said.length === 0 || !said.every(({ kind }) => kind === 'vital')) return false;
  // "Negative, pulse ninety two": as it is said by radio.
  const isNo = marked(first, 'plain') || talk.tokens[first.from]?.word === 'negative';
  if (!isNo) return false;
  if (!rest.every((piece) => piece.role === 'vital' || isChatter(piece))) return false;
  const anew = wouldSay(talk, rest, stateAll);
  // "No, the pulse is one oh four": it is one that was told of, whatever was read since.
  const isNamed =
    rest.some(({ role, islands: [island] }) => role === 'vital' && (island?.slots.length ?? 0) > 0) &&
    /^(the|that) .*\b(is|was)\b/.test(saidIn(talk.tokens, rest[0]?.from, rest.at(-1)?.to));
  const isSame =
    anew.length === 1 &&
    anew.every(
      ({ statement }) =>
        statement.kind === 'vital' &&
        (isNamed || said.some((one) => one.kind === 'vital' && one.vital === statement.vital)),
    );
  return isSame && correct(talk, { ...clause, pieces: rest }, stateAll);
}

/** Takes "no, four cuts" behind a number of cuts for a correction of it. */
export function turnCount(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const [first, ...rest] = clause.pieces;
  const [last, ...others] = talk.context.said;
  if (first === undefined || !marked(first, 'denies-nothing') || rest[0]?.role !== 'figure') return false;
  if (last?.kind !== 'finding' || others.length > 0 || last.count === undefined || !last.present)
    return false;
  const anew = wouldSay({ ...talk }, rest, stateAll);
  const isSame =
    anew.length === 1 &&
    anew.every(
      ({ statement }) =>
        statement.kind === 'finding' &&
        statement.finding === last.finding &&
        statement.site === last.site &&
        statement.side === last.side,
    );
  return isSame && correct(talk, { ...clause, pieces: rest }, stateAll);
}

/** How many pieces a name takes that somebody is called by: "no, Marta, the right shin". A capital or a pause tells it from a thing that is denied. */
function callAt({ tokens, utterance }: Talk, [name, ...place]: readonly Piece[]): number {
  const [token, before] = [tokens[name?.from ?? -1], tokens[(name?.from ?? 0) - 1]];
  if (name?.role !== 'unknown' || token === undefined || place.length === 0) return 0;
  const isName = /^\p{Lu}\p{Ll}/u.test(utterance.text.slice(token.from, token.to));
  return isName && (isPaused(tokens, name) || before?.pause === '') ? 1 : 0;
}

const isFoundLast = ({ context: { said, isSaidLast, asking } }: Talk): boolean =>
  isSaidLast && !asking && said.length > 0 && said.every((one) => one.kind === 'finding' && one.present);

// "Hang on, ninety three": the only figure that is said, and like that of the sign just read.
function isFigureNear(
  { context: { said, isSaidLast } }: Talk,
  [figure, ...others]: readonly Piece[],
): boolean {
  const last = said.at(-1);
  const was = last?.kind === 'vital' && isSaidLast ? mainOf(last) : null;
  const now = figure === undefined ? null : figureIn(figure);
  return was !== null && now !== null && isNear(was, now) && others.every(isChatter);
}

// "No, the right, Shaz, look": what stands past a pause is said to somebody, where it states nothing.
function upToCall({ tokens }: Talk, pieces: readonly Piece[]): readonly Piece[] {
  const end = pieces.findIndex((piece) => isPaused(tokens, piece));
  const behind = end < 0 ? [] : pieces.slice(end + 1);
  const own = pieces.slice(0, end + 1);
  // "No, the right elbow, I said right": the side once more.
  const isAgain = (piece: Piece): boolean =>
    piece.role === 'side' &&
    sideIn([piece])?.side !== undefined &&
    sideIn([piece])?.side === sideIn(own)?.side;
  return behind.length > 0 && behind.every((piece) => CALLED.has(piece.role) || isAgain(piece))
    ? own
    : pieces;
}

const CALLED: ReadonlySet<Piece['role']> = new Set(['unknown', 'small', 'talk']);

const isPlace = ({ role }: Piece): boolean => role === 'side' || role === 'site' || role === 'talk';
