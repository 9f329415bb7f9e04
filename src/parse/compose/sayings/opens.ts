// How a part of a breath opens that says something whole by itself.

import { isLikely, isSmall, marked, type Piece, type Role, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { startsWithPreposition } from '../sites/site-phrase.ts';
import { isJoin } from './ends.ts';
import { denies, isCheck, isOfItself, isPainScore, isReading, isStated } from './said.ts';

/**
 * `place`: "knees not swollen"; `stated`: "no pain in the neck", "tender over the jaw", "splint on the left wrist"; `name`: "graze to
 * the elbow", which a "no" before it may reach; `located`: a finding that has one place only; `itself`: a check or care that needs none.
 */
export type Opening = 'place' | 'stated' | 'name' | 'located' | 'itself' | 'history' | 'score' | 'reading';

/** An opening is told by its first pieces; it also keeps the cost of a breathless talk in step with its length. */
export const FAR = 24;

/** The opening of the pieces from `at` on, or null where they do not say anything whole. */
export function openingOf(pieces: readonly Piece[], tokens: readonly Token[], at = 0): Opening | null {
  const next = pieces.slice(at, at + FAR);
  if (opensWithPlace(next, tokens)) return 'place';
  const first = next.find(({ role }) => role !== 'small' && role !== 'figure' && role !== 'attribute');
  // Behind an "and" the next part opens.
  if (first === undefined) return null;
  const lead = next.slice(0, next.indexOf(first));
  if (lead.some((piece) => isJoin(piece) || isPaused(tokens, piece))) return null;
  if (isPainScore(first)) return 'score';
  if (isReading(first) && !isCheckToo(first)) return 'reading';
  if (first.role === 'history') return 'history';
  if (first.role !== 'finding' && isOfItself(first)) return 'itself';
  return findingOf(next, tokens);
}

// "Cap refill three seconds" is a check of the limb.
const isCheckToo = ({ islands }: Piece): boolean => islands.some(({ file }) => file === 'csm');

const SUBJECT: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

// "Knees not swollen", "the left calf is soft", "right foot has no feeling".
function opensWithPlace(next: readonly Piece[], tokens: readonly Token[], mayName = false): boolean {
  const end = next.findIndex(
    (piece, k) =>
      !SUBJECT.has(piece.role) &&
      !isSmall(piece, 'article') &&
      !(isSmall(piece, 'join') && next.slice(0, k).some(isSite)),
  );
  const [subject, rest] = [next.slice(0, Math.max(end, 0)), next.slice(Math.max(end, 0))];
  // "Left thigh tender, other side not tender": so it is with the place that was named.
  const place = subject.findIndex((piece) => isSite(piece) || isFarSide(piece));
  if (place < 0 || subject.some((piece) => isPaused(tokens, piece))) return false;
  if (subject.slice(0, place + 1).some((piece) => startsWithPreposition([piece], tokens))) return false;
  // "No cuts other side cut": what has its side before it is not denied with what stands there.
  const isFar = subject.every((piece) => !isSite(piece));
  return isPredicate(rest, tokens, mayName || isFar);
}

/**
 * True for "left ribs crunching", where nothing before it could have that place: else the place may end what was said, and the name
 * begin what comes next.
 */
export const namesAtPlace = (pieces: readonly Piece[], tokens: readonly Token[], at = 0): boolean =>
  opensWithPlace(pieces.slice(at, at + FAR), tokens, true);

const isSite = ({ role }: Piece): boolean => role === 'site';

/** True for "the other side" as the subject of what is said behind it. */
export const isFarSide = (piece: Piece): boolean =>
  piece.role === 'side' && isLikely(piece, 'side', 'mirror');

// What is said of a place behind its name.
function isPredicate(rest: readonly Piece[], tokens: readonly Token[], mayName: boolean): boolean {
  let links = mayName;
  for (const [k, piece] of rest.entries()) {
    if (piece.role === 'finding') {
      const isName = !isLikely(piece, 'adj') && !marked(piece, 'present', 'false');
      return !isName || (links && !leadsElsewhere(rest.slice(k), tokens));
    }
    if (isCheck(piece)) return (links || !marked(piece, 'noun')) && !leadsElsewhere(rest.slice(k), tokens);
    if (piece.role === 'state' || piece.role === 'care') return true;
    // "Right hand the same"; in "chin the same forehead" it is not known what is.
    if (readingOf(piece, 'sides.again') !== null) return rest[k + 1]?.role !== 'site';
    const isLink = isSmall(piece, 'link') || isSmall(piece, 'having') || denies(piece);
    if (isLink) links = true;
    else if (piece.role !== 'attribute' && piece.role !== 'asking' && piece.role !== 'small') return false;
    if (isPaused(tokens, piece)) return false;
  }
  return false;
}

// "And the right foot no movement in the left foot": what is denied is so at the place that it leads to.
const leadsElsewhere = ([noun, led, site]: readonly Piece[], tokens: readonly Token[]): boolean =>
  noun !== undefined &&
  led !== undefined &&
  !isLikely(noun, 'adj') &&
  !isPaused(tokens, noun) &&
  (leads(led, tokens) || endsLeading(noun, tokens)) &&
  (led.role === 'site' || site?.role === 'site' || site?.role === 'side');

const PASSED: ReadonlySet<Role> = new Set(['small', 'figure', 'attribute', 'side', 'part', 'negation']);

// What is stated first, and leads to its place.
function findingOf(next: readonly Piece[], tokens: readonly Token[]): Opening | null {
  const at = next.findIndex(isStated);
  const stated = next[at];
  if (stated === undefined) return null;
  const lead = next.slice(0, at);
  if (!lead.every((piece) => isLead(piece, tokens))) return null;
  const isDenied = lead.some(denies);
  if (stated.weak && !isDenied && !isNothingAt(next.slice(at), tokens)) return null;
  const isName =
    stated.role === 'finding' && !isDenied && !isLikely(stated, 'adj') && !marked(stated, 'present', 'no');
  if (isOfItself(stated) && stated.role === 'finding') return isName ? 'name' : 'located';
  return leadsToPlace(next.slice(at), tokens) ? (isName ? 'name' : 'stated') : null;
}

// "Nothing on the right palm".
const isNothingAt = ([stated, led, ...rest]: readonly Piece[], tokens: readonly Token[]): boolean =>
  stated !== undefined &&
  led !== undefined &&
  isNothing(stated) &&
  !isPaused(tokens, stated) &&
  leads(led, tokens) &&
  (led.role === 'site' || rest.find(({ role }) => role !== 'side' && role !== 'small')?.role === 'site');

const isNothing = (piece: Piece): boolean => piece.role === 'finding' && marked(piece, 'nothing');

// "He's got a", "there's a", "no", "a big".
const isLead = (piece: Piece, tokens: readonly Token[]): boolean =>
  (PASSED.has(piece.role) || piece.role === 'answer' || marked(piece, 'exists')) &&
  piece.role !== 'side' &&
  !isPaused(tokens, piece) &&
  !isJoin(piece);

const CHANGES = /^(gone|going|goes|went|come|coming|getting|got|spreading)$/;

function leadsToPlace([stated, ...rest]: readonly Piece[], tokens: readonly Token[]): boolean {
  if (stated === undefined || isPaused(tokens, stated)) return false;
  let isLed = endsLeading(stated, tokens);
  for (const [k, piece] of rest.entries()) {
    if (piece.role === 'site')
      return (isLed || isCheckAt(stated, rest, k, tokens)) && !isExtent(tokens, stated.from, piece.from);
    // "Weak on the right because of the thumb".
    if (piece.role === 'negation') return false;
    // "Some blisters nothing on the right palm": the place is what nothing is on.
    if (isNothing(piece)) return false;
    if (leads(piece, tokens)) isLed = true;
    // "Bruising and swelling of the jaw".
    const isJoin = isSmall(piece, 'join') || isSmall(piece, 'or');
    const isOfList = !isLikely(stated, 'adj') && (piece.role === stated.role || isJoin);
    // "Swelling's gone down in the ankle".
    const isPassed =
      PASSED.has(piece.role) ||
      (isCheck(stated) && marked(piece, 'state')) ||
      piece.role === 'asking' ||
      tokens.slice(piece.from, piece.to).some(({ word }) => CHANGES.test(word));
    if (isJoin ? !isOfList : !isPassed && !isOfList) return false;
    if (isPaused(tokens, piece)) return false;
  }
  return false;
}

// "Radial strong left hand" is a check of that hand; in "radial strong left hand cold" the place opens the next.
function isCheckAt(stated: Piece, rest: readonly Piece[], site: number, tokens: readonly Token[]): boolean {
  if (!isCheck(stated)) return false;
  const from = rest.slice(0, site).findLastIndex(({ role }) => !SUBJECT.has(role)) + 1;
  const isSaid = marked(stated, 'present') || rest.slice(0, site).some((piece) => marked(piece, 'state'));
  const after = rest[site + 1];
  return !isSaid || !((after !== undefined && isCheck(after)) || opensWithPlace(rest.slice(from), tokens));
}

// "Swelling up to the ankle": how far it goes.
const isExtent = (tokens: readonly Token[], from: number, to: number): boolean =>
  /\b(up to|down to|far as|past)\b/.test(saidIn(tokens, from, to));

// "Nothing wrong with the elbow".
const leads = (piece: Piece, tokens: readonly Token[]): boolean =>
  startsWithPreposition([piece], tokens) ||
  isSmall(piece, 'preposition') ||
  tokens[piece.from]?.word === 'with';

// "Dressing on the".
const endsLeading = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  tokens.slice(from + 1, to).some(({ word }) => /^(on|to|over|in|at|across|around|from)$/.test(word));
