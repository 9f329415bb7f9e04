// "Pelvis is solid, okay", "right, the left knee is sore": a breath of one such word, beside what says something, is talk; it calls
// nothing normal and names no side.

import { isPaired, isSite } from '../../terms/index.ts';
import { saidIn, type Token } from '../token.ts';
import { isSmall, marked, type Piece, type Role, readingOf, tagIn } from './piece.ts';
import { isTag } from './tag.ts';

/** The pieces with each such breath read as talk. */
export const withCourtesies = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some((piece) => mayBeCourtesy(piece, tokens))
    ? pieces.map((piece, i) =>
        isCourtesy(pieces, i, tokens) || isCall(pieces, i, tokens) || isTagWithin(pieces, i, tokens)
          ? { ...piece, role: 'talk' }
          : piece,
      )
    : pieces;

const mayBeCourtesy = (piece: Piece, tokens: readonly Token[]): boolean =>
  isSoft(piece, tokens) || isRight(piece, tokens) || isTag(piece, tokens);

// "The nose is bent, isn't it, and it's bleeding": what was found goes on behind it, and nobody is asked.
function isTagWithin(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next === undefined || !isTag(piece, tokens)) return false;
  if (/^(end|ask)$/.test(pauseAt(tokens, piece.to - 1))) return false;
  const start = pieces.slice(0, i).findLastIndex(({ to }) => /^(end|ask)$/.test(pauseAt(tokens, to - 1))) + 1;
  const said = pieces.slice(start, i);
  const isFound = said.some(({ role, weak }) => role === 'finding' && !weak);
  const goesOn = pauseAt(tokens, piece.to - 1) === 'pause' || isSmall(next, 'join');
  return isFound && goesOn && !said.some(({ role, weak }) => (role === 'asking' && !weak) || role === 'ask');
}

const SOFT = /^(okay|ok|good|great|fine|right|alright|perfect|lovely)$/;

// "Normal" and "clear" are no courtesy.
const isSoft = (piece: Piece, tokens: readonly Token[]): boolean =>
  piece.role === 'finding' &&
  piece.weak &&
  marked(piece, 'soft') &&
  SOFT.test(tokens[piece.to - 1]?.word ?? '');

const pauseAt = (tokens: readonly Token[], at: number): string => tokens[at]?.pause ?? '';

function isCourtesy(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece === undefined || !isSoft(piece, tokens)) return false;
  if (i === 0 && opensPlace(pieces, tokens)) return true;
  if (closesPlan(pieces, i, tokens)) return true;
  const isEnd = i === pieces.length - 1 || pauseAt(tokens, piece.to - 1) !== '';
  if (!isEnd) return false;
  if (i === 0) return pieces.length > 1 && pauseAt(tokens, piece.to - 1) === 'pause';
  return pauseAt(tokens, piece.from - 1) === 'pause' && !isOpen(breathBefore(pieces, i, tokens));
}

// "Now I'm going to have a feel of your belly okay": it is told to the patient before anything is felt. Without a pause behind it, it is
// so where the look is yet to come, or where the patient is told or asked something next: "checking your hip okay tell me to stop".
function closesPlan(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [okay, next] = [pieces[i], pieces[i + 1]];
  if (okay === undefined || !OKAY.test(tokens[okay.to - 1]?.word ?? '')) return false;
  const breath = breathBefore(pieces, i, tokens);
  const led = breath.slice(breath.findLastIndex(({ role }) => !PLACE.has(role)) + 1);
  const isYours = tokens.slice(led[0]?.from, okay.from).some(({ word }) => word === 'your');
  const isComing = led.some((piece) => isToCome(piece, tokens));
  if (next !== undefined && pauseAt(tokens, okay.to - 1) === '')
    return isComing || (isYours && ADDRESS.has(next.role) && !next.weak);
  return isComing || (isYours && led.some(({ role, weak }) => role === 'intention' && !weak));
}

const ADDRESS: ReadonlySet<Role> = new Set(['mood', 'ask']);

const isToCome = ({ role, from, to }: Piece, tokens: readonly Token[]): boolean =>
  role === 'intention' && TO_COME.test(saidIn(tokens, from, to));

const TO_COME = /\b(going to|gonna|will)\b/;

const OKAY = /^(okay|ok|alright|right)$/;

// "Okay left grip is weak": the side is that of what is said next.
function opensPlace([okay, side, place, ...rest]: readonly Piece[], tokens: readonly Token[]): boolean {
  if (okay === undefined || side?.role !== 'side' || place === undefined) return false;
  if (!OKAY.test(tokens[okay.to - 1]?.word ?? '')) return false;
  if (pauseAt(tokens, okay.to - 1) !== '' || pauseAt(tokens, side.to - 1) !== '') return false;
  return (
    (place.role === 'csm' && !isBareCheck(place)) ||
    (place.role === 'site' && rest.some(({ role, weak }) => SAYING.has(role) && !weak))
  );
}

const SAYING: ReadonlySet<Role> = new Set(['finding', 'csm']);

// "Shoulders, good" and "pulses in both feet, good" say how they are.
const isOpen = (breath: readonly Piece[]): boolean =>
  breath.every((piece) => PLACE.has(piece.role) || isBareCheck(piece)) &&
  breath.some(({ role }) => role !== 'small' && role !== 'talk' && role !== 'side');

const PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk', 'intention', 'limbs']);

// A check that does not say how it was.
const isBareCheck = (piece: Piece): boolean =>
  (piece.role === 'csm' && !marked(piece, 'present')) ||
  (piece.role === 'vital' && (piece.islands[0]?.slots.length ?? 0) === 0);

function breathBefore(pieces: readonly Piece[], i: number, tokens: readonly Token[]): readonly Piece[] {
  let from = i - 1;
  while (from > 0 && pauseAt(tokens, (pieces[from - 1]?.to ?? 0) - 1) === '') from--;
  return pieces.slice(from, i);
}

const isRight = ({ role, from, to, weak }: Piece, tokens: readonly Token[]): boolean =>
  role === 'side' && weak && to - from === 1 && tokens[from]?.word === 'right';

// A "right" that opens what is said is a side only where it can be that of the place behind it.
function isCall(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (i > 0 || piece === undefined || next === undefined || !isRight(piece, tokens)) return false;
  if (pauseAt(tokens, piece.to - 1) !== 'pause') return false;
  if (pieces.slice(1).some(({ role, weak }) => role === 'side' && !weak)) return true;
  const site = readingOf(next, 'sites') === null ? [] : (tagIn(next, 'sites', 'site') ?? '').split('+');
  return !site.filter(isSite).some(isPaired) && pieces.slice(1).every(({ role }) => role !== 'side');
}
