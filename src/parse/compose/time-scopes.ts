// What each time of a clause is said of: what stands between the same commas, or the signs that it stands before.

import { type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused, pauseAfter, type Span, spanned } from '../span.ts';
import { saidIn } from '../token.ts';
import { LEAD } from './corrections/late-time.ts';
import { headsOf } from './sign-runs.ts';
import type { Talk } from './talk.ts';
import { withoutNow } from './then-and-now.ts';

/** The stretch that each of these times of a clause is said of. */
export function scopesOf(talk: Talk, pieces: readonly Piece[], times: readonly Piece[]): readonly Span[] {
  const timed: Timed = {
    parts: partsOf(talk, pieces),
    times,
    heads: headsOf(pieces, times, talk.tokens),
    whole: spanned(pieces),
  };
  return times.map((time, k) => {
    const scope = upToNow(talk, pieces, time, scopeOf(talk, timed, k));
    return withoutNow(talk.tokens, pieces, times, time, scope);
  });
}

// "Ninety over fifty at ten past and one ten over sixty now", "now it's …": what is so now has no time that was said before it.
function upToNow({ tokens }: Talk, pieces: readonly Piece[], time: Piece, scope: Span): Span {
  const isNow = (piece: Piece | undefined): boolean =>
    piece !== undefined && saidIn(tokens, piece.from, piece.to) === 'now';
  const now = pieces.find(
    (piece, i) =>
      piece.from >= time.to &&
      (isNow(piece) || (piece.role === 'vital' && !isPaused(tokens, piece) && isNow(pieces[i + 1]))),
  );
  return now === undefined || now.from >= scope.to ? scope : { from: scope.from, to: now.from };
}

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history', 'unknown']);

/** True for what says something of the patient, and for words that nobody knows. */
export const states = (piece: Piece): boolean =>
  STATING.has(piece.role) && !(piece.weak && readingOf(piece, 'talk') !== null);

/** The pieces between the commas. */
function partsOf(talk: Talk, pieces: readonly Piece[]): readonly (readonly Piece[])[] {
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

interface Timed {
  readonly parts: readonly (readonly Piece[])[];
  readonly times: readonly Piece[];
  /** those that stand before a run of signs */
  readonly heads: ReadonlySet<Piece>;
  readonly whole: Span;
}

// "Fell at two fifteen, pulse is ninety": a time goes with what stands between the same commas. One that stands there alone,
// or before all else, goes with all up to the next time; and one after a set of readings with the whole set.
function scopeOf(talk: Talk, { parts, times, heads, whole }: Timed, k: number): Span {
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
  if (heads.has(piece)) return { from: piece.from, to: next };
  const head = times[k - 1];
  if (head !== undefined && heads.has(head))
    return { from: closedFrom(parts, head, piece, part), to: Math.min(spanned(part).to, next) };
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
  if (closesHistory(part, piece)) return { from: Math.max(past, part[0]?.from ?? past), to: piece.to };
  if (!before && !after) return { from: past, to: times.length === 1 ? whole.to : piece.to };
  // "Resps twenty at first, twenty six at ten past": a figure of its own has its own time.
  const figure = part.findLast((one) => one.role === 'figure' && one.from < piece.from && one.from >= past);
  if (figure !== undefined) return { from: figure.from, to: Math.min(spanned(part).to, next) };
  if (part.some(({ role }) => role === 'figure'))
    return { from: Math.max(past, part[0]?.from ?? past), to: next };
  let first = at;
  // "Ten minutes ago pulse was one ten": what it leads is meant, and not the set before it.
  while (before && first > 0 && hasOnly(part, 'vital') && hasOnly(parts[first - 1] ?? [], 'vital')) first--;
  return { from: Math.max(past, parts[first]?.[0]?.from ?? past), to: Math.min(spanned(part).to, next) };
}

// "She fell at twenty to ten pulse one ten": when it happened; the pulse is of now.
function closesHistory(part: readonly Piece[], time: Piece): boolean {
  const at = part.indexOf(time);
  const isSign = part.slice(at + 1).find(states)?.role === 'vital';
  return isSign && part[at - 1]?.role === 'history';
}

// "At ten past pulse ninety, splint on at quarter past": the later time closes what stands next to it, and leaves the signs theirs.
function closedFrom(
  parts: readonly (readonly Piece[])[],
  head: Piece,
  time: Piece,
  part: readonly Piece[],
): number {
  const isBetween = (one: Piece): boolean =>
    one.from >= head.to && one.from < time.from && (states(one) || one.role === 'figure');
  const own = part.includes(head) ? [] : part.filter(isBetween);
  return (own[0] ?? parts.flat().findLast(isBetween) ?? time).from;
}

// "Binder on, tightened at fourteen oh five": the word says nothing of its own.
const leadsToTime = ({ tokens }: Talk, piece: Piece): boolean =>
  readingOf(piece, 'care.earlier') !== null ||
  (piece.role === 'unknown' && tokens.slice(piece.from, piece.to).every(({ word }) => LEAD.test(word)));
