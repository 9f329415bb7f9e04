// "GCS was ten at ten past and it's twelve at twenty past", "was eighty at ten past": behind a sign a figure with its own time, or
// with a "now", is that sign anew, without a pause too; and so is "it's one twelve now" in the next breath.

import type { VitalStatement } from '../../../terms/index.ts';
import { figureIn, isSmall, type Piece, readingOf } from '../../pieces/piece.ts';
import { isClearlyParted } from '../../pieces/time-and-figure.ts';
import { isPaused, type Span } from '../../span.ts';
import { readTimes, resolveTime } from '../../times/index.ts';
import { saidIn, type Token } from '../../token.ts';
import { place, type SaidTime, state, type Talk } from '../talk.ts';
import { opensRange } from './inexact.ts';
import { vitalFromFigure } from './vital.ts';

/** States the figure at `i` as the latest sign's reading; false where it has neither a time nor a "now" beside it. */
export function stateTimedFigure(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  const last = talk.context.said.at(-1);
  if (piece === undefined || last?.kind !== 'vital' || (!isSaidHere(talk, last) && !isSaidBefore(talk)))
    return false;
  const value = figureOf(talk, piece);
  const most = piece.role === 'time' ? MOST_TIMES_OF_CLOCK : MOST_TIMES;
  const read = value === null || !isLike(last, value, most) ? null : vitalFromFigure(last.vital, value);
  const said = read === null ? null : wordsOf(talk, pieces, i);
  if (read === null || said === null) return false;
  const { own, ...words } = said;
  const { times } = talk;
  talk.times = own === null ? [] : [{ ...own, scope: words }];
  state(talk, [{ ...read, known: { ...read.known, vital: 'carried' }, ...words }]);
  talk.times = times;
  place(talk, words);
  return true;
}

const isSaidHere = ({ frames }: Talk, last: VitalStatement): boolean => {
  const frame = frames.at(-1);
  return frame?.frame === 'statement' && frame.statement === last;
};

const isSaidBefore = ({ frames, context }: Talk): boolean =>
  frames.length === 0 && context.isSaidLast && context.asked === null;

/** The number that the piece says; an "oh five" is the end of another one. */
function figureOf({ tokens }: Talk, piece: Piece): number | null {
  if (tokens[piece.from]?.word === 'oh') return null;
  return piece.role === 'figure' || piece.role === 'time' ? figureIn(piece) : null;
}

// A pulse of ninety is not ten the next time: then the number is of something else.
const MOST_TIMES = 3;
/** "Two fifteen" may be a time of day. */
const MOST_TIMES_OF_CLOCK = 2;

function isLike({ vital, value }: VitalStatement, now: number, most: number): boolean {
  const isRate = vital === 'pulse' || vital === 'respirations';
  const before = isRate ? value.rate : vital === 'oxygen-saturation' ? value.percent : undefined;
  return before === undefined || (now * most >= before && now <= before * most);
}

const LEADS =
  /^((and|then|but|so|it|he|she|they|is|are|was|were|at|up|down|back|to|about|around|now)( |$))+$/;
const STANDS = /^(and |but )?(it|he|she|they) (is|are)( now)?( (up|down|back))?( at| to)?$/;

interface Words extends Span {
  /** null for what is so now */
  readonly own: SaidTime | null;
}

/** The words of a figure with its own time or a "now", or null; in a breath after the sign's only "it's … now" counts. */
function wordsOf(talk: Talk, pieces: readonly Piece[], i: number): Words | null {
  const { tokens } = talk;
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || opensRange(tokens, pieces, i)) return null;
  let first = i;
  // "Pulse ninety now and it was one thirty": the "now" is of the first.
  while (isLead(talk, pieces[first - 1]) && !isNowBeforeWas(talk, pieces[first - 1], piece)) first--;
  const from = pieces[first]?.from ?? piece.from;
  const lead = saidIn(tokens, from, piece.from);
  const runsOn = next !== undefined && !isPaused(tokens, piece);
  const isNow = runsOn && saidIn(tokens, next.from, next.to) === 'now';
  const to = isNow ? next.to : piece.to;
  if (isNow || /\bnow\b/.test(lead)) {
    const isAll = first === 0 && STANDS.test(lead) && closes(tokens, pieces, isNow ? i + 1 : i);
    const isOfSign = talk.frames.length > 0 ? lead !== '' && (isNow || closes(tokens, pieces, i)) : isAll;
    return isOfSign && !isTimeOfDay(talk, piece) ? { from, to, own: null } : null;
  }
  if (talk.frames.length === 0) return null;
  const behind = runsOn ? timeAt(talk, next) : undefined;
  if (behind !== undefined) return { from, to, own: behind };
  const time = pieces[first - 1];
  const own = time === undefined ? undefined : timeAt(talk, time);
  if (time === undefined || own === undefined || !closes(tokens, pieces, i)) return null;
  return lead !== '' || isClear(talk, time, piece) ? { from, to, own } : null;
}

const timeAt = ({ times }: Talk, { from, role }: Piece): SaidTime | undefined =>
  role === 'time' ? times.find(({ piece }) => piece.from === from) : undefined;

const isLead = ({ tokens }: Talk, piece: Piece | undefined): boolean =>
  piece !== undefined &&
  !isPaused(tokens, piece) &&
  piece.role !== 'time' &&
  LEADS.test(saidIn(tokens, piece.from, piece.to));

const isNowBeforeWas = ({ tokens }: Talk, lead: Piece | undefined, figure: Piece): boolean =>
  lead !== undefined && /^(\w+ )*now( \w+)* (was|were)\b/.test(saidIn(tokens, lead.from, figure.from));

/** True where nothing that is counted, and no unit, follows. */
function closes(tokens: readonly Token[], pieces: readonly Piece[], i: number): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next === undefined || isPaused(tokens, piece)) return true;
  return (
    next.role === 'time' ||
    next.role === 'vital' ||
    isSmall(next, 'join') ||
    tokens[next.from]?.word === 'then'
  );
}

function isClear({ tokens }: Talk, time: Piece, figure: Piece): boolean {
  const slot = readingOf(time, 'times.when')?.slots[0];
  return slot !== undefined && isClearlyParted(tokens, slot, figure);
}

// "It's two fifteen now", said at a quarter past two: so late it is. A choice of ours, no source.
const NEAR = 10 * 60_000;

function isTimeOfDay({ utterance, tokens }: Talk, { from, to }: Piece): boolean {
  const words = tokens.slice(0, to).map(({ word }) => word);
  const times = [...readTimes(words, from), ...readTimes([...words, "o'clock"], from)];
  return times.some(
    ({ end, time }) =>
      end >= to && Math.abs(resolveTime(time, utterance.heardAt, utterance.zone) - utterance.heardAt) < NEAR,
  );
}
