// States the vital signs of a clause, their numbers straight after their names or apart from them; impossible ones are left.

import type { Vital, VitalStatement } from '../../../terms/index.ts';
import { hasTag, type Island } from '../../islands/island.ts';
import { readNumbers } from '../../numbers/index.ts';
import {
  figureIn,
  isSmall,
  likelyTag,
  marked,
  type Piece,
  type Role,
  readingOf,
} from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { isLight } from '../light.ts';
import { bear, isPlaced, place, type Said, state, type Talk, textOf } from '../talk.ts';
import { ofNamedSign } from './counted.ts';
import { misfitIn } from './gcs.ts';
import { glucoseDoubt } from './glucose.ts';
import { endsInBound, isBounded, isTimeOfSign, opensRange } from './inexact.ts';
import { placeAfter, placeBefore } from './measured-at.ts';
import { pupilDoubt, withoutPronouns } from './pupils.ts';
import { pressureAt } from './two-figures.ts';
import { vitalFromFigure, vitalOf } from './vital.ts';
import type { VitalRead } from './vital-read.ts';

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
    isNumeral(talk, before);
  // "At least ninety systolic": no reading, but what it is not below.
  const isBound = island.slots[0]?.from === piece.from && endsInBound(talk.tokens, before);
  // "Heart rate ninety two on the sats probe": the figure is of the sign before it.
  const isTaken = hasTag(island, 'reverse') && before !== undefined && isHeadingBefore(talk, before);
  if (isBound || isTaken || midway || (hasTag(island, 'follows') && !followsLike(talk, pieces, i))) return 0;
  const runsOn = next?.role === 'figure' && !next.weak && !isPaused(talk.tokens, piece);
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
    if (read === null || (hasTag(reading, 'num', 'both') && isOfOneSide(talk, pieces, i))) continue;
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
    .findLast((one) => !isLight(one) && one.role !== 'figure' && isPlaced(talk, one));
  const piece = pieces[i];
  const { asked } = talk.context;
  // "What are his sats?" "Ninety one on air".
  if (before === undefined && piece !== undefined && asked?.about === 'vital')
    return likelyTag(piece, 'vital') === asked.vital;
  return (
    before?.role === 'vital' &&
    piece !== undefined &&
    likelyTag(before, 'vital') === likelyTag(piece, 'vital')
  );
}

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

function settle(talk: Talk, said: Said): void {
  state(talk, [said]);
  place(talk, said);
}

// "Pulse … ninety two": the figure may come after a pause or a few small words.
function stateHeading(talk: Talk, pieces: readonly Piece[], i: number): number {
  const heading = pieces[i];
  const vital = heading === undefined ? null : (likelyTag(heading, 'vital') as Vital | null);
  if (heading === undefined || vital === null) return 0;
  for (let k = i + 1; k < pieces.length; k++) {
    const piece = pieces[k];
    if (piece === undefined) break;
    // "Pressure at two fifteen was one oh eight on seventy".
    const two = vital === 'blood-pressure' ? pressureAt(pieces, talk.tokens, k) : null;
    if (two !== null) {
      settle(talk, { ...two, from: heading.from, to: pieces[k + 2]?.to ?? piece.to });
      return k - i + 3;
    }
    const pressure = vital === 'blood-pressure' && piece.role === 'vital' && marked(piece, 'bare');
    if (pressure || piece.role === 'figure') {
      const read = pressure ? pressureIn(piece) : fromFigure(vital, piece);
      // "Temp rechecked, thirty five four": a figure that runs straight on may belong to the number.
      const next = pieces[k + 1];
      if (next?.role === 'figure' && !next.weak && !isPaused(talk.tokens, piece)) return 0;
      const isExact = !isBounded(talk.tokens, heading.to, piece.from) && !opensRange(talk.tokens, pieces, k);
      if (read === null || !isExact) return 0;
      settle(talk, { ...read, from: heading.from, to: piece.to });
      return k - i + 1;
    }
    if (!isLight(piece) && piece.role !== 'time') break;
  }
  // "Taking a pulse" … "ninety six": the next bare figure may be its answer.
  if (talk.context.asked === null) bear(talk, { asked: { about: 'vital', vital, named: true } });
  return 0;
}

// "Pressure at fifteen twenty was ninety four over sixty": the name comes first, the time between, and nothing is inferred.
function pressureIn(figures: Piece): VitalRead | null {
  const island = readingOf(figures, 'vitals.blood-pressure');
  const read = island === null ? null : vitalOf(island);
  return read === null ? null : { ...read, known: {} };
}

/** The vital sign that a bare figure gives under this name, or null. */
function fromFigure(vital: Vital, figure: Piece): VitalRead | null {
  const value = figureIn(figure);
  return value === null ? null : vitalFromFigure(vital, value);
}

/** States a figure that answers a question after a vital sign; false where the pieces hold none, or more than one thing. */
export function stateFigureAnswer(talk: Talk, pieces: readonly Piece[], vital: Vital): boolean {
  const [first] = pieces;
  // "What's her pulse?" "One oh two.": so few words may be a time of day, and answer no question after a pulse so.
  const isTime = first?.role === 'time' && figureIn(first) !== null;
  const [figure, ...others] = isTime ? [first] : pieces.filter((piece) => piece.role === 'figure');
  // "E three, V T, M five" is no figure of three.
  if (figure === undefined || others.length > 0) return false;
  if (pieces.some((piece) => piece.role === 'vital' || piece.role === 'site')) return false;
  const read = fromFigure(vital, figure);
  if (read === null) return false;
  const from = pieces[0]?.from ?? figure.from;
  const to = pieces.at(-1)?.to ?? figure.to;
  const like = pieces.flatMap((piece) =>
    piece.role === 'unknown' ? [talk.tokens[piece.from]?.word ?? ''] : [],
  );
  const { statement } = read;
  const isRate = statement.vital === 'pulse' || statement.vital === 'respirations';
  const said: VitalStatement =
    isRate && like.length > 0 ? { ...statement, value: { ...statement.value, quality: like } } : statement;
  settle(talk, { ...read, statement: said, known: { ...read.known, vital: 'carried' }, from, to });
  return true;
}
