// The times said in a clause ("at fourteen twelve", "ten minutes ago"), as instants, and what each of them is said of.

import type { Clause } from '../clauses/clause.ts';
import { hasTag } from '../islands/island.ts';
import { marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { pauseAfter, type Span, spanned } from '../span.ts';
import { hoursBack, isPlainClock, resolveTime, type SpokenTime } from '../times/index.ts';
import { saidIn, type Token } from '../token.ts';
import { LEAD } from './corrections/late-time.ts';
import type { SaidTime, Talk } from './talk.ts';

/**
 * The spoken times that go with a clause: its own, each with the stretch it is said of, or the one that stands by itself in
 * a clause of the same sentence.
 */
export function timesFor(talk: Talk, clause: Clause): readonly SaidTime[] {
  if (!talk.clauses.some(({ pieces }) => pieces.some(({ role }) => role === 'time'))) return [];
  const whole = spanned(clause.pieces);
  const own = timesIn(talk, clause);
  if (own.length > 0) {
    const parts = partsOf(talk, clause);
    return own.flatMap((piece, k) => saidTime(talk, piece, piece, scopeOf(talk, parts, own, k, whole)));
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

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history', 'unknown']);

const states = (piece: Piece): boolean => STATING.has(piece.role);

/** The clause between its commas. */
function partsOf(talk: Talk, { pieces }: Clause): readonly (readonly Piece[])[] {
  const parts: Piece[][] = [[]];
  for (const piece of pieces) {
    parts.at(-1)?.push(piece);
    if (pauseAfter(talk.tokens, piece) !== '') parts.push([]);
  }
  return parts.filter((part) => part.length > 0);
}

const hasOnly = (part: readonly Piece[], role: Role): boolean =>
  part.every((piece) => piece.role === role || !states(piece));

const CHECKED = /^(rechecked|rechecking|recheck|checked|remeasured)$/;

// "Fell at two fifteen, pulse is ninety": a time goes with what stands between the same commas. One that stands there alone,
// or before all else, goes with all up to the next time; and one after a set of readings with the whole set.
function scopeOf(
  talk: Talk,
  parts: readonly (readonly Piece[])[],
  times: readonly Piece[],
  k: number,
  whole: Span,
): Span {
  const piece = times[k];
  const at = parts.findIndex((part) => piece !== undefined && part.includes(piece));
  const part = parts[at];
  if (piece === undefined || part === undefined) return whole;
  const before = part
    .slice(0, part.indexOf(piece))
    .some((one) => one.role === 'figure' || (states(one) && !leadsToTime(talk, one)));
  const after = part.slice(part.indexOf(piece) + 1).some(states);
  const past = times[k - 1]?.to ?? whole.from;
  const next = times[k + 1]?.from ?? whole.to;
  // "Gave glucose gel, rechecked at ten past": the time is of the check, and of nothing before it.
  const isRecheck = part
    .slice(0, part.indexOf(piece))
    .some((one) => CHECKED.test(talk.tokens[one.from]?.word ?? ''));
  if (isRecheck) return { from: part[0]?.from ?? past, to: times.length === 1 ? whole.to : next };
  const leads = !parts
    .slice(0, at + 1)
    .flat()
    .some((one) => one.from < piece.from && states(one));
  if (leads) return { from: whole.from, to: next };
  if (!before && !after) return { from: past, to: times.length === 1 ? whole.to : piece.to };
  // "Resps twenty at first, twenty six at ten past": a figure of its own has its own time.
  const figure = part.findLast((one) => one.role === 'figure' && one.from < piece.from && one.from >= past);
  if (figure !== undefined) return { from: figure.from, to: next };
  if (part.some(({ role }) => role === 'figure'))
    return { from: Math.max(past, part[0]?.from ?? past), to: next };
  let first = at;
  // "Ten minutes ago pulse was one ten": what it leads is meant, and not the set before it.
  while (before && first > 0 && hasOnly(part, 'vital') && hasOnly(parts[first - 1] ?? [], 'vital')) first--;
  return { from: Math.max(past, parts[first]?.[0]?.from ?? past), to: Math.min(spanned(part).to, next) };
}

// "Binder on, tightened at fourteen oh five": the word says nothing of its own.
const leadsToTime = ({ tokens }: Talk, piece: Piece): boolean =>
  readingOf(piece, 'care.earlier') !== null ||
  (piece.role === 'unknown' && tokens.slice(piece.from, piece.to).every(({ word }) => LEAD.test(word)));

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
    return clause.pieces.every(({ role }) => role === 'time' || role === 'small' || role === 'correction');
  // It counts beside care ("tourniquet, fourteen twelve") and straight after a set of signs is named ("second obs fourteen
  // ten"); elsewhere it may be any two numbers.
  if (isOfCare(talk, piece, clause)) return true;
  return time.twentyFour && (clause.pieces.some((one) => one.role === 'care') || isOfSet(piece, clause));
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

const TIMED = /^(time|given|applied|placed|on|in)$/;

// "Tourniquet on ten fifty two", "tourniquet time ten fifty two": nothing else is counted so.
function isOfCare({ tokens }: Talk, piece: Piece, { pieces }: Clause): boolean {
  const before = pieces[pieces.indexOf(piece) - 1];
  const closes = pieces.at(-1) === piece || pauseAfter(tokens, piece) !== '';
  if (closes && before?.role === 'care' && TIMED.test(tokens[before.to - 1]?.word ?? '')) return true;
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

function isOfSet(piece: Piece, { pieces }: Clause): boolean {
  const at = pieces.indexOf(piece);
  const next = pieces[at + 1];
  const opens = pieces.slice(0, at).every((one) => one.role === 'small' || one.role === 'talk');
  const named = pieces.slice(0, at).some((one) => marked(one, 'set'));
  return opens && named && (next === undefined || next.role === 'vital');
}

const spokenIn = (piece: Piece): SpokenTime | null =>
  readingOf(piece, 'times.when')?.slots.find((slot) => slot.time !== null)?.time ?? null;
