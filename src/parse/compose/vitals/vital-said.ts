// States the vital signs of a clause, their numbers straight after their names or apart from them; impossible ones are left.

import { hasTag, type Island } from '../../islands/island.ts';
import { readNumbers } from '../../numbers/index.ts';
import { isSmall, likelyTag, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { readTimes } from '../../times/index.ts';
import type { Token } from '../../token.ts';
import { isLight } from '../light.ts';
import { isPlaced, type Talk, textOf } from '../talk.ts';
import { ofNamedSign } from './counted.ts';
import { misfitIn } from './gcs.ts';
import { glucoseDoubt } from './glucose.ts';
import { closesRange, endsInBound, isRestOfTime, isTimeOfSign, opensRange } from './inexact.ts';
import { placeAfter, placeBefore } from './measured-at.ts';
import { pupilDoubt, withoutPronouns } from './pupils.ts';
import { settle } from './settle.ts';
import { isPartedFromTime, stateHeading } from './sign-named.ts';
import { vitalOf } from './vital.ts';

/** States the vital sign at `i`; returns how many pieces it took (0: its numbers cannot be). */
export function stateVital(talk: Talk, pieces: readonly Piece[], i: number): number {
  const piece = pieces[i];
  const [island] = piece?.islands ?? [];
  if (piece === undefined || island === undefined) return 0;
  if (hasTag(island, 'heading')) return stateHeading(talk, pieces, i);
  // "Temp thirty four nine": a figure that runs straight on may belong to the number, so neither is taken.
  const next = pieces[i + 1];
  const before = pieces[i - 1];
  // "One thousand one ninety seven beats": nor is a number taken from its middle.
  const midway =
    before !== undefined &&
    NUMERIC.has(before.role) &&
    !isPaused(talk.tokens, before) &&
    island.slots[0]?.from === piece.from &&
    isNumeral(talk, before) &&
    !(isSaidTime(talk, before) && isPartedFromTime(talk.tokens, before, piece));
  if (isOnlyAround(talk, piece) || isCountedBefore(talk, piece)) return 0;
  // "At least ninety systolic": no reading, but what it is not below.
  const isBound =
    island.slots[0]?.from === piece.from &&
    (endsInBound(talk.tokens, before) || closesRange(talk.tokens, pieces, i));
  // "Heart rate ninety two on the sats probe": the figure is of the sign before it.
  const isTaken = hasTag(island, 'reverse') && before !== undefined && isHeadingBefore(talk, before);
  if (hasTag(island, 'reverse') && isHour(talk.tokens, island)) return 0;
  if (isBound || isTaken || midway || (hasTag(island, 'follows') && !followsLike(talk, pieces, i))) return 0;
  const runsOn =
    next !== undefined &&
    !isPaused(talk.tokens, piece) &&
    ((next.role === 'figure' && !next.weak) || isRestOfTime(talk.tokens, island, next));
  // "Eighty, now ten minutes later …": what is counted in time is no reading.
  if (hasTag(island, 'num', 'former') && isTimed(talk, piece)) return 0;
  const endsInNumber = island.slots.at(-1)?.to === piece.to;
  if (endsInNumber && isTimeOfSign(talk.tokens, pieces, i)) return 0;
  if (endsInNumber && (runsOn || opensRange(talk.tokens, pieces, i))) return 0;
  for (const one of piece.islands.filter(({ file }) => file === 'vitals')) {
    const reading = ofNamedSign(talk, piece, withoutPronouns(one, talk.tokens));
    if (reading === null) continue;
    const read = vitalOf(reading);
    if (!isSure(talk, pieces, i, reading)) continue;
    if (read === null || (isOfBothOrLast(reading) && isOfOneSide(talk, pieces, i))) continue;
    const [before, after] = [placeBefore(talk.tokens, pieces, i), placeAfter(talk.tokens, pieces, i)];
    const { from, to } = spanned(pieces.slice(i - before, i + after + 1));
    const asked =
      read.statement.vital === 'glucose' ? glucoseDoubt(reading, talk.tokens) : pupilDoubt(reading);
    const doubt = [
      ...(reading.slots.some((slot) => slot.loose) ? ['A number was heard as another word.'] : []),
      ...(asked === null ? [] : [asked]),
    ];
    settle(talk, { ...read, from, to, doubt });
    return 1 + after;
  }
  return askWhichHolds(talk, piece) ? 1 : 0;
}

// "At two thirty on the pulse there was a skip": when it was.
function isHour(tokens: readonly Token[], { slots: [number] }: Island): boolean {
  if (number === undefined || tokens[number.from - 1]?.word !== 'at') return false;
  const words = tokens.map(({ word }) => word);
  return readTimes(words, number.from).some(({ end }) => end === number.to);
}

// "At fourteen ten ninety over sixty": the number before it is when.
const isSaidTime = ({ times }: Talk, { role, from }: Piece): boolean =>
  role === 'time' && times.some((time) => time.piece.from === from);

// "The skin is red round the bite": so it is in one place.
const isOnlyAround = ({ tokens }: Talk, piece: Piece): boolean =>
  likelyTag(piece, 'vital') === 'skin' &&
  !isPaused(tokens, piece) &&
  /^(round|around|near)$/.test(tokens[piece.to]?.word ?? '');

// "One on eyes three on speech": the number of a part stands before it, and the one behind it is the next part's.
const isCountedBefore = ({ tokens }: Talk, piece: Piece): boolean =>
  likelyTag(piece, 'vital') === 'gcs' &&
  /^(on|for)$/.test(tokens[piece.from - 1]?.word ?? '') &&
  readNumbers([tokens[piece.from - 2]?.word ?? ''], 0).length > 0;

const isHeadingBefore = ({ tokens }: Talk, before: Piece): boolean =>
  before.role === 'vital' && marked(before, 'heading') && !isPaused(tokens, before);

// "Sats ninety seven on four" is litres where nothing else is counted, and "pressure one twenty six seventy eight" two numbers
// where they are said in one breath and cannot be one.
function isSure({ tokens }: Talk, pieces: readonly Piece[], i: number, reading: Island): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined) return false;
  const closes =
    next === undefined || isPaused(tokens, piece) || next.role === 'vital' || isSmall(next, 'join');
  if (hasTag(reading, 'bare-liters'))
    return closes && (reading.slots.at(-1)?.value ?? MOST_LITERS + 1) <= MOST_LITERS;
  // "Elbow locked at ninety degrees", "turned out by forty".
  if (hasTag(reading, 'bare-degrees')) {
    const isAngle = /^(at|to|by|of|about|around|angle|roughly)$/.test(tokens[piece.from - 1]?.word ?? '');
    return !isAngle && !pieces.some(({ role }) => role === 'site' || role === 'finding' || role === 'part');
  }
  if (!hasTag(reading, 'split')) return true;
  const [upper, lower] = reading.slots.slice(-2);
  if (upper === undefined || lower === undefined || isPaused(tokens, upper)) return false;
  const words = tokens.slice(upper.from, lower.to).map(({ word }) => word);
  return closes && !readNumbers(words, 0).some(({ end }) => end === words.length);
}

// The most that a flowmeter gives a minute (common practice, no source).
const MOST_LITERS = 15;

// "Sats eighty six on air, ninety seven on fifteen litres": a figure without a name is another of the sign before it.
function followsLike(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const before = pieces
    .slice(0, i)
    .findLast((one) => !isLight(one) && one.role !== 'figure' && one.role !== 'time' && isPlaced(talk, one));
  const piece = pieces[i];
  const { asked, said, isSaidLast } = talk.context;
  // "Sats ninety one, no, ninety three on two litres."
  const last = isSaidLast && isCorrecting(talk, piece) ? said.at(-1) : undefined;
  if (before === undefined && piece !== undefined && last?.kind === 'vital')
    return likelyTag(piece, 'vital') === last.vital;
  // "What are his sats?" "Ninety one on air".
  if (before === undefined && piece !== undefined && asked?.about === 'vital')
    return likelyTag(piece, 'vital') === asked.vital;
  return (
    before?.role === 'vital' &&
    piece !== undefined &&
    likelyTag(before, 'vital') === likelyTag(piece, 'vital')
  );
}

// "Right three, sluggish on the left": what the last words say is of the side behind them.
const isOfBothOrLast = (reading: Island): boolean =>
  hasTag(reading, 'num', 'both') || hasTag(reading, 'left-reactive') || hasTag(reading, 'right-reactive');

const isCorrecting = ({ clauses }: Talk, piece: Piece | undefined): boolean =>
  clauses.some(
    ({ mood, pieces }) => mood === 'correction' && pieces.some(({ from }) => from === piece?.from),
  );

// "Pupils three left …": a size with a side straight after it is not of both.
const isOfOneSide = (talk: Talk, pieces: readonly Piece[], i: number): boolean => {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next?.role !== 'side' || isPaused(talk.tokens, piece)) return false;
  return marked(next, 'side', 'left') || marked(next, 'side', 'right');
};

// A coma scale whose parts do not make its sum is no reading, and the words are kept with the question that settles it.
function askWhichHolds(talk: Talk, piece: Piece): boolean {
  const [question] = piece.islands.flatMap((one) => (one.file === 'vitals' ? (misfitIn(one) ?? []) : []));
  if (question === undefined) return false;
  const { from, to } = piece;
  settle(talk, { statement: { kind: 'note', text: textOf(talk, from, to) }, from, to, doubt: [question] });
  return true;
}

const isTimed = (talk: Talk, { to }: Piece): boolean =>
  /^(second|minute|hour|day)s?$/.test(talk.tokens[to]?.word ?? '');

const NUMERIC: ReadonlySet<Role> = new Set(['figure', 'unknown', 'time', 'small']);

const isNumeral = (talk: Talk, piece: Piece): boolean =>
  piece.role === 'figure' ||
  piece.role === 'time' ||
  readNumbers([talk.tokens[piece.to - 1]?.word ?? ''], 0).length > 0 ||
  /^(hundred|thousand|million|point)$/.test(talk.tokens[piece.to - 1]?.word ?? '');
