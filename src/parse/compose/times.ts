// The times said in a clause ("at fourteen twelve", "ten minutes ago"), as instants, and what each of them is said of.

import type { Clause } from '../clauses/clause.ts';
import { hasTag } from '../islands/island.ts';
import { marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { pauseAfter, type Span, spanned } from '../span.ts';
import { hoursBack, isPlainClock, resolveTime, type SpokenTime } from '../times/index.ts';
import { saidIn, type Token } from '../token.ts';
import { onsetTimes } from './history/onset-time.ts';
import { opensSigns } from './sign-runs.ts';
import type { SaidTime, Talk } from './talk.ts';
import { scopesOf, states } from './time-scopes.ts';

/**
 * The spoken times that go with a clause: its own, each with the stretch it is said of, or the one that stands by itself in
 * a clause of the same sentence.
 */
export const timesFor = (talk: Talk, clause: Clause): readonly SaidTime[] => [
  ...besideFor(talk, clause),
  // Last, since what tells its own beginning has no other time.
  ...onsetTimes(talk, clause).flatMap(({ time, from, to }) => saidAt(talk, time, { from, to })),
];

const saidAt = (
  { utterance: { heardAt, zone } }: Talk,
  time: SpokenTime,
  words: Span,
): readonly SaidTime[] => {
  const instant = resolveTime(time, heardAt, zone);
  return [{ instant, piece: words, words, scope: words, hoursBack: hoursBack(time, instant, heardAt) }];
};

/** The same, of times that stand by themselves beside what they are said of. */
function besideFor(talk: Talk, clause: Clause): readonly SaidTime[] {
  if (!talk.clauses.some(({ pieces }) => pieces.some(({ role }) => role === 'time'))) return [];
  const whole = spanned(clause.pieces);
  const own = timesIn(talk, clause);
  if (own.length > 0) {
    const scopes = scopesOf(talk, clause.pieces, own);
    return own.flatMap((piece, k) => saidTime(talk, piece, piece, scopes[k] ?? whole));
  }
  const sentence = talk.clauses.filter((one) => one.sentence === clause.sentence);
  // Two bare numbers that correct something are no time of the words before them.
  const times = sentence.filter(({ mood }) => mood !== 'correction').flatMap((one) => timesIn(talk, one));
  const [piece] = times;
  const from = sentence.find((one) => piece !== undefined && one.pieces.includes(piece));
  const isAlone = from !== undefined && times.length === 1 && !from.pieces.some(states);
  return piece === undefined || !isAlone ? [] : saidTime(talk, piece, null, whole);
}

function saidTime(talk: Talk, piece: Piece, words: Span | null, scope: Span): readonly SaidTime[] {
  const time = spokenIn(piece);
  if (time === null) return [];
  const { heardAt, zone } = talk.utterance;
  const instant = resolveTime(time, heardAt, zone);
  return [{ instant, piece, words, scope, hoursBack: hoursBack(time, instant, heardAt) }];
}

const timesIn = (talk: Talk, clause: Clause): readonly Piece[] =>
  clause.pieces.filter((piece) => isTime(talk, piece, clause));

function isTime(talk: Talk, piece: Piece, clause: Clause): boolean {
  const time = piece.role === 'time' ? spokenIn(piece) : null;
  if (time === null) return false;
  const island = readingOf(piece, 'times.when');
  if (island === null) return true;
  if (isRoughReading(talk, piece, time, clause) || isOfThen(talk, piece)) return false;
  if (!hasTag(island, 'ago-only')) return true;
  // "Collar off, ten past" beside care; "ten past" elsewhere may be anything.
  if (time.kind === 'minute') return isBesideCare(talk, piece, clause);
  if (time.kind !== 'clock') return true;
  // "Tourniquet on the left thigh, twenty past nine": these words are no two numbers.
  if (isPlain(talk, piece) && clause.mood !== 'correction' && isBesideCare(talk, piece, clause)) return true;
  // A bare clock time in a correction may be the time that is corrected.
  if (clause.mood === 'correction')
    return (
      isTimeOfCareAnew(talk, piece, clause) ||
      clause.pieces.every(({ role }) => role === 'time' || role === 'small' || role === 'correction')
    );
  // It counts beside care ("tourniquet, fourteen twelve") and straight after a set of signs is named ("second obs fourteen
  // ten"); elsewhere it may be any two numbers.
  if (isOfCare(talk, piece, clause)) return true;
  if (isNoFigure(talk, piece, time) && (isOfSet(piece, clause) || opensSigns(talk, clause, piece)))
    return true;
  return time.twentyFour && clause.pieces.some((one) => one.role === 'care');
}

const isPlain = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  isPlainClock(tokens.slice(from, to).map(({ word }) => word));

// "Weaker than it was ten minutes ago": what is told is so now.
const isOfThen = ({ tokens }: Talk, { from }: Piece): boolean =>
  /\bthan( (it|he|she|they|that) (was|were|did|had))?( about)?$/.test(
    saidIn(tokens, Math.max(0, from - 4), from),
  );

// "Pulse is thready, about one forty": after a sign two such numbers are its own.
const isRoughReading = (talk: Talk, piece: Piece, time: SpokenTime, { pieces }: Clause): boolean =>
  time.kind === 'clock' &&
  !isPlain(talk, piece) &&
  !time.twentyFour &&
  /^(about|around)$/.test(talk.tokens[piece.from]?.word ?? '') &&
  pieces.slice(0, pieces.indexOf(piece)).at(-1)?.role !== 'care' &&
  pieces.slice(0, pieces.indexOf(piece)).some(({ role }) => role === 'vital');

// The last of what is said between its commas, where care was named before it.
const isBesideCare = ({ tokens }: Talk, piece: Piece, { pieces }: Clause): boolean =>
  (pieces.at(-1) === piece || pauseAfter(tokens, piece) !== '') &&
  pieces.slice(0, pieces.indexOf(piece)).some(({ role }) => role === 'care');

const TIMED = /\b(time|given|applied|placed|on|in)( is| was)?$/;

// "Correction, tourniquet time thirteen forty five"; of a drug two numbers may be how much.
const isTimeOfCareAnew = (talk: Talk, piece: Piece, clause: Clause): boolean =>
  isOfCare(talk, piece, clause) &&
  clause.pieces.every((one) => one.role !== 'care' || !marked(one, 'care', 'medication'));

// "Tourniquet on ten fifty two", "tourniquet time ten fifty two": nothing else is counted so.
function isOfCare({ tokens }: Talk, piece: Piece, { pieces }: Clause): boolean {
  const before = pieces[pieces.indexOf(piece) - 1];
  const closes = pieces.at(-1) === piece || pauseAfter(tokens, piece) !== '';
  if (closes && before?.role === 'care' && TIMED.test(saidIn(tokens, before.from, before.to))) return true;
  return closes && isBehindItsPlace(tokens, pieces.slice(0, pieces.indexOf(piece)));
}

// "Tourniquet high on the left thigh ten fifty two": past the place that it was given at nothing of it is counted.
function isBehindItsPlace(tokens: readonly Token[], before: readonly Piece[]): boolean {
  const care = before.findLastIndex(({ role }) => role === 'care');
  const between = before.slice(care + 1);
  return (
    care >= 0 &&
    between.at(-1)?.role === 'site' &&
    between.every(({ role }) => OF_PLACE.has(role)) &&
    !between.some((piece) => pauseAfter(tokens, piece) !== '')
  );
}

const OF_PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small']);

const LEAST_BARE_HOUR = 10;

// "One twenty", "nine ten" may be a sign's figure or two of them; "ten twenty", "quarter to nine" and "half nine" are none.
const isNoFigure = (talk: Talk, piece: Piece, time: Extract<SpokenTime, { kind: 'clock' }>): boolean =>
  time.hour >= LEAST_BARE_HOUR || isPlain(talk, piece) || talk.tokens[piece.from]?.word === 'half';

function isOfSet(piece: Piece, { pieces }: Clause): boolean {
  const at = pieces.indexOf(piece);
  const next = pieces[at + 1];
  const opens = pieces.slice(0, at).every((one) => one.role === 'small' || one.role === 'talk');
  const named = pieces.slice(0, at).some((one) => marked(one, 'set'));
  return opens && named && (next === undefined || next.role === 'vital');
}

const spokenIn = (piece: Piece): SpokenTime | null =>
  readingOf(piece, 'times.when')?.slots.find((slot) => slot.time !== null)?.time ?? null;
