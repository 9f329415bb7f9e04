// Whether words that may take something back do so here, by what follows them.

import { sideAfter } from '../compose/sites/said-side.ts';
import { tagOf } from '../islands/island.ts';
import { endsAnew, isNear, looksAgain, numberOfSign } from '../pieces/figure-anew.ts';
import { figureIn, isSmall, likelyTag, marked, type Piece } from '../pieces/piece.ts';
import { isTenths } from '../pieces/tenths.ts';
import { isPaused, pauseAfter, pauseBefore } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { turnsToSide } from './side-anew.ts';

/** A firm correction always is one; "sorry" or "no wait" only where a side, a site or a number follows. */
export function corrects(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece === undefined) return false;
  // "It's the upper arm I meant, not the forearm": what was meant stands before it.
  if (isMeantBefore(pieces, i, tokens)) return false;
  if (marked(piece, 'correct', 'firm')) return true;
  // "Sorry and the left one": what is joined on takes nothing back.
  const [joined] = pieces.slice(i + 1);
  if (joined !== undefined && isSmall(joined, 'join') && !isSmall(joined, 'or')) return false;
  // "Make the pulse eighty six" puts a sign right; "make the left one warm" does nothing of the kind.
  if (/^make (the|his|her)$/.test(saidIn(tokens, piece.from, piece.to)))
    return isReadingNext(pieces[i + 1]) || isPlaceAlone(pieces.slice(i + 1));
  // "No, call it six"; "no, call it in as a fracture" puts no figure right.
  if (marked(piece, 'of-number')) return isNumber(pieces[i + 1]) || isPlaceAlone(pieces.slice(i + 1));
  for (const [k, next] of pieces.slice(i + 1).entries()) {
    const { role } = next;
    if (
      role === 'side' ||
      role === 'figure' ||
      (role === 'time' && figureIn(next) !== null) ||
      role === 'vital' ||
      role === 'site'
    )
      return true;
    // "No wait, five of morphine": a drug by its amount, which was given otherwise than said.
    if (role === 'care') return next.islands[0]?.slots[0]?.from === next.from;
    // "Sorry, laceration" corrects; "actually there is swelling" says something new, "actually the bruise was" does not.
    if (role === 'finding') return !marked(piece, 'hedge') || isToldAgain(pieces, i + 1 + k);
    // "No wait, that's the left one" asks nothing.
    if (role === 'asking' && isPointing(next, tokens)) continue;
    // "Sorry, the inner wrist".
    if (role === 'correction' || role === 'part') continue;
    // "Excuse me, can I see your arm": a courtesy, unless nothing but the place stands behind it.
    if (marked(piece, 'pardon') && !LEADS.some((word) => isSmall(next, word))) return false;
    if (role !== 'small' && role !== 'talk' && role !== 'negation' && role !== 'answer') return false;
    // "Sorry, give me your right arm", "sorry, back to the left hip": what is wanted next.
    if (WANTS.test(saidIn(tokens, next.from, next.to))) return false;
    if (pauseAfter(tokens, next) === 'end') return false;
  }
  return false;
}

const WANTS = /^(give|show|about|back( to)?)$/;

// "That | is the".
const isPointing = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  /^(that|this|it) (is|was) the$/.test(saidIn(tokens, Math.max(0, from - 1), to));

const isNumber = (next: Piece | undefined): boolean =>
  next !== undefined && (figureIn(next) !== null || (next.role === 'vital' && marked(next, 'bare')));

const isReadingNext = (next: Piece | undefined): boolean =>
  next?.role === 'vital' && (next.islands[0]?.slots.length ?? 0) > 0;

const isPlaceAlone = (rest: readonly Piece[]): boolean =>
  rest.length > 0 && rest.every(({ role }) => role === 'side' || role === 'site' || role === 'part');

function isMeantBefore(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next === undefined || tokens[piece.to - 1]?.word !== 'meant') return false;
  return isNot(next, tokens) && pieces.slice(0, i).some(({ role }) => role === 'site' || role === 'side');
}
const LEADS = ['article', 'preposition', 'link'] as const;

/** "Remembers the crash." "No wait, she doesn't": nothing follows but the answer turned. */
export function turnsAnswer(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece === undefined || !marked(piece, 'correct', 'soft')) return false;
  const end = pieces.findIndex((one, k) => k > i && pauseAfter(tokens, one) === 'end');
  const said = pieces.slice(i + 1, end < 0 ? pieces.length : end + 1).filter(({ role }) => role !== 'talk');
  const [only, ...others] = said;
  if (only === undefined || others.length > 0 || !marked(only, 'answer')) return false;
  return THIRD.test(tokens[only.from]?.word ?? '') && pauseAfter(tokens, only) !== 'ask';
}

const THIRD = /^(he|she|it|they|there)$/;

// "The bruise was …": a thing already told of.
function isToldAgain(pieces: readonly Piece[], i: number): boolean {
  const [before, next] = [pieces[i - 1], pieces[i + 1]];
  if (before === undefined || next === undefined || !isSmall(before, 'article')) return false;
  // "Actually the gash is on the right knee".
  const where = pieces[i + 2];
  const isPlace =
    where !== undefined && (isSmall(where, 'preposition') || where.role === 'side' || where.role === 'site');
  return isSmall(next, 'was') || (isSmall(next, 'link') && isPlace);
}

/**
 * "Swelling left ankle no the right": a "no" with nothing after it but a side. "Sats eighty nine no ninety eight": one
 * with nothing after it but another number for the sign before it. "Not left, right": a side and then the other.
 */
export function takesBack(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next, after] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (piece === undefined || next === undefined) return false;
  if (isNot(piece, tokens))
    return next.role === 'side' && isPaused(tokens, next) && isLastSide(pieces, i + 2, tokens);
  if (readsAgain(pieces, i, tokens) || turnsToSide(pieces, i, tokens)) return true;
  if (!marked(piece, 'plain')) return false;
  const isClockToo = next.role === 'time' && figureIn(next) !== null;
  if (
    next.role === 'figure' ||
    isClockToo ||
    (next.role === 'vital' && (marked(next, 'bare') || isAnew(pieces[i - 1], next)))
  ) {
    if (!endsInNumber(pieces[i - 1])) return false;
    // "Sats ninety two no ninety four": without a pause only where it is the last thing that is said.
    if (isClockToo || pauseBefore(tokens, piece) !== '')
      return isAlone(next, pastTenths(pieces, i + 1, tokens), tokens);
    return !isPaused(tokens, piece) && pastTenths(pieces, i + 1, tokens) === undefined;
  }
  const isEnd =
    after === undefined ||
    after.role === 'site' ||
    (after.role === 'correction' && after.weak) ||
    // "No, your other right, the left hand".
    (after.role === 'side' && sideAfter(after) !== null && sideAfter(after) === sideAfter(next));
  return next.role === 'side' && next.to - next.from > 1 && isEnd;
}

// "Sats eighty four on air hold on eighty eight", "resps fourteen no eighteen sorry the engine shook": a figure near the sign's.
function readsAgain(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [sign, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  const was = numberOfSign(sign);
  const isPressure = next?.role === 'vital' && marked(next, 'bare') && isPressureOf(sign);
  const now = next === undefined ? null : isPressure ? numberOfSign(next) : figureIn(next);
  if (piece === undefined || was === null || now === null || isPaused(tokens, piece)) return false;
  return (
    (marked(piece, 'plain') || looksAgain(piece, tokens)) &&
    isNear(was, now) &&
    endsAnew(pieces, i + 1, tokens)
  );
}

const isPressureOf = (sign: Piece | undefined): boolean =>
  sign !== undefined && likelyTag(sign, 'vital') === 'blood-pressure';

// "Sats ninety two no ninety four percent": the same sign, by its number first.
const isAnew = (before: Piece | undefined, { from, islands: [island] }: Piece): boolean =>
  before?.role === 'vital' &&
  island?.slots[0]?.from === from &&
  likelyTag(before, 'vital') !== null &&
  likelyTag(before, 'vital') === tagOf(island, 'vital');

/** The piece past a number; "thirty eight five" may be a temperature, whose last figure belongs to it. */
function pastTenths(pieces: readonly Piece[], i: number, tokens: readonly Token[]): Piece | undefined {
  const [figure, tenths] = [pieces[i], pieces[i + 1]];
  const isOne = figure !== undefined && tenths !== undefined && isTenths(figure, tenths, tokens);
  return isOne ? pieces[i + 2] : tenths;
}

const isNot = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  to - from === 1 && tokens[from]?.word === 'not';

// Nothing but a side, to the end of what is said.
const isLastSide = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const [side, after] = [pieces[i], pieces[i + 1]];
  return side?.role === 'side' && (after === undefined || isPaused(tokens, side));
};

const endsInNumber = (sign: Piece | undefined): boolean =>
  sign?.role === 'vital' && sign.islands[0]?.slots.at(-1)?.to === sign.to;

const isAlone = (piece: Piece, after: Piece | undefined, tokens: readonly Token[]): boolean =>
  after === undefined || isPaused(tokens, piece) || after.role === 'vital';
