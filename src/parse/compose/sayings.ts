// Parts of one breath that each say something whole: "knees not swollen and no pain in the neck". Each is read by itself, so that
// no place, side or denial of the one gets into the other.

import type { Topic } from '../../terms/index.ts';
import { isLikely, isSmall, likelyTag, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { startsWithPreposition } from './sites/site-phrase.ts';

type Pieces = readonly Piece[];

/** The parts of these pieces, without the "and" or the "but" between them; one where nothing parts them. */
export function sayingsIn(pieces: Pieces, tokens: readonly Token[]): readonly Pieces[] {
  const parts: Pieces[] = [];
  let start = 0;
  for (let k = 1; k < pieces.length; k++) {
    const begins = beginsAt(pieces, tokens, k);
    if (begins === null) continue;
    const left = pieces.slice(start, k);
    const next = pieces.slice(begins);
    const kind = kindOf(left, marked(pieces[begins - 1] as Piece, 'contrast'));
    if (!saysWhole(left, next) || endsInList(left) || !opensWhole(next, tokens, kind, left)) continue;
    parts.push(left);
    start = begins;
    k = begins;
  }
  parts.push(pieces.slice(start));
  return parts;
}

// Past a comma, an "and" or a "but"; null where the piece begins nothing.
function beginsAt(pieces: Pieces, tokens: readonly Token[], k: number): number | null {
  const [before, piece] = [pieces[k - 1], pieces[k]];
  if (before === undefined || piece === undefined) return null;
  if (isJoin(piece)) return k + 1 < pieces.length ? k + 1 : null;
  return isPaused(tokens, before) && !isJoin(before) ? k : null;
}

const isJoin = (piece: Piece): boolean =>
  (isSmall(piece, 'join') && !isSmall(piece, 'or')) || marked(piece, 'contrast');

/** What the part before tells of; it decides what may begin after it. */
type Kind = 'list' | 'history' | 'told' | 'plain';

// What happened, what was eaten and what is taken end where a finding has its own place; an allergy shows somewhere.
const ENDS: readonly Topic[] = ['mechanism', 'last-intake', 'medications', 'age', 'weight', 'sex'];

// After "no" and the names of findings more names may follow, and after history what it came with.
function kindOf(left: Pieces, isTurned: boolean): Kind {
  const told = left.findLast(({ role }) => role === 'history');
  if (told !== undefined)
    return isTurned ? 'plain' : ENDS.some((topic) => isLikely(told, 'topic', topic)) ? 'told' : 'history';
  const denial = left.findLastIndex((piece) => denies(piece));
  const denied = left.slice(denial + 1).find(({ role }) => role === 'finding');
  const isList = denial >= 0 && denied !== undefined && !isLikely(denied, 'adj');
  // "Chest clear of any injury": nothing more can be named.
  return isList && !(marked(denied, 'finding', 'abnormality') && has(left.slice(0, denial), 'site'))
    ? 'list'
    : 'plain';
}

const denies = (piece: Piece): boolean => piece.role !== 'finding' && marked(piece, 'negation', 'before');

/** A check of a limb; "pulse" alone may be one. */
const isCheck = (piece: Piece): boolean =>
  piece.role === 'csm' ||
  (piece.role === 'vital' && piece.islands[0]?.slots.length === 0 && readingOf(piece, 'csm') !== null);

const has = (pieces: Pieces, role: Role): boolean => pieces.some((piece) => piece.role === role);

// "Swelling of the left knee ankle and foot are fine": the places before the "and" are of one list with what follows it.
const endsInList = (left: Pieces): boolean => left.at(-1)?.role === 'site' && left.at(-2)?.role === 'site';

function saysWhole(left: Pieces, next: Pieces): boolean {
  if (has(left, 'history')) return true;
  if (left.some((piece) => piece.role === 'vital' && (piece.islands[0]?.slots.length ?? 0) > 0)) return true;
  if (has(left, 'care') || left.some(isOfItself)) return true;
  if (!has(left, 'site')) return false;
  if (has(left, 'finding') || left.some((piece) => saysHow(piece, left))) return true;
  // "Pulse in the left foot" may share with another check what is said behind it.
  const first = next.find((piece) => isStated(piece));
  return left.some(isCheck) && (first === undefined || !isCheck(first));
}

// "Trachea's in the middle", "grip's strong", "collar's on": the words themselves say where.
const isOfItself = (piece: Piece): boolean =>
  (piece.role === 'finding' && isLikely(piece, 'at')) ||
  (piece.role === 'csm' && isLikely(piece, 'end') && isLikely(piece, 'present')) ||
  (piece.role === 'care' && PLACELESS.has(likelyTag(piece, 'care')));

const PLACELESS: ReadonlySet<string | null> = new Set([
  'collar',
  'oxygen',
  'airway-opened',
  'recovery-position',
  'fluids',
  'food',
  'medication',
  'cpr',
]);

const isPainScore = (piece: Piece): boolean =>
  piece.role === 'vital' &&
  piece.islands[0]?.rule === 'vitals.pain-score' &&
  piece.islands[0].slots.length > 0;

// What a score may be of.
const hurts = (left: Pieces): boolean =>
  !left.some(denies) &&
  left.some((piece) => piece.role === 'finding' && !isLikely(piece, 'present', 'false'));

// A check that says how it was.
const saysHow = (piece: Piece, part: Pieces): boolean =>
  piece.role === 'csm' &&
  (marked(piece, 'present') || marked(piece, 'warmth') || has(part, 'state') || part.some(denies));

function opensWhole(next: Pieces, tokens: readonly Token[], after: Kind, left: Pieces): boolean {
  if (opensWithPlace(next, tokens)) return true;
  if (after === 'history') return opensWithFinding(next, tokens, 'list');
  const first = next.find(({ role }) => role !== 'small' && role !== 'figure' && role !== 'attribute');
  if (first !== undefined && isPainScore(first)) return !hurts(left);
  if (first !== undefined && first.role !== 'finding' && isOfItself(first)) return true;
  if (first?.role === 'history') return after === 'plain';
  return opensWithFinding(next, tokens, after);
}

const SUBJECT: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

// "Knees not swollen", "the left calf is soft", "right foot has no feeling".
function opensWithPlace(next: Pieces, tokens: readonly Token[]): boolean {
  let k = 0;
  let places = 0;
  while (k < next.length) {
    const piece = next[k] as Piece;
    const isOfSubject =
      SUBJECT.has(piece.role) || isSmall(piece, 'article') || (places > 0 && isSmall(piece, 'join'));
    if (!isOfSubject) break;
    if (places === 0 && startsWithPreposition([piece], tokens)) return false;
    if (piece.role === 'site') places++;
    k++;
    if (isPaused(tokens, piece)) return false;
  }
  if (places === 0) return false;
  let links = false;
  for (; k < next.length; k++) {
    const piece = next[k] as Piece;
    if (piece.role === 'finding')
      return (
        (links && !leadsElsewhere(next.slice(k), tokens)) ||
        isLikely(piece, 'adj') ||
        marked(piece, 'present', 'false')
      );
    if (isCheck(piece)) return (!marked(piece, 'noun') || links) && !leadsElsewhere(next.slice(k), tokens);
    if (piece.role === 'state' || piece.role === 'care') return true;
    const isLink = isSmall(piece, 'link') || isSmall(piece, 'having') || denies(piece);
    if (isLink) links = true;
    else if (piece.role !== 'attribute' && piece.role !== 'asking' && piece.role !== 'small') return false;
    if (isPaused(tokens, piece)) return false;
  }
  return false;
}

// "And the right foot no movement in the left foot": what is denied is so at the place that it leads to.
const leadsElsewhere = ([noun, led, site]: Pieces, tokens: readonly Token[]): boolean =>
  noun !== undefined &&
  led !== undefined &&
  !isLikely(noun, 'adj') &&
  !isPaused(tokens, noun) &&
  (leads(led, tokens) || endsLeading(noun, tokens)) &&
  (led.role === 'site' || site?.role === 'site' || site?.role === 'side');

const isStated = (piece: Piece): boolean =>
  piece.role === 'finding' || piece.role === 'care' || isCheck(piece);
const PASSED: ReadonlySet<Role> = new Set(['small', 'figure', 'attribute', 'side', 'part', 'negation']);

// "No pain in the neck", "graze to the right elbow", "splint on the left wrist", "moves both feet fine".
function opensWithFinding(next: Pieces, tokens: readonly Token[], after: Kind): boolean {
  const at = next.findIndex(isStated);
  const stated = next[at];
  if (stated === undefined || (stated.weak && !next.slice(0, at).some(denies))) return false;
  const lead = next.slice(0, at);
  const isPlain = lead.every(
    (piece) =>
      (PASSED.has(piece.role) || piece.role === 'answer' || marked(piece, 'exists')) &&
      !isPaused(tokens, piece) &&
      !isSmall(piece, 'join'),
  );
  if (!isPlain || lead.some(({ role }) => role === 'side')) return false;
  const isDenied = lead.some(denies) || marked(stated, 'present', 'no');
  if (after === 'list' && stated.role === 'finding' && !isDenied && !isLikely(stated, 'adj')) return false;
  if (isOfItself(stated) && stated.role === 'finding') return true;
  let isLed = isCheck(stated) || endsLeading(stated, tokens);
  for (const piece of next.slice(at)) {
    if (piece.role === 'site') return isLed && !isExtent(tokens, stated.from, piece.from);
    if (leads(piece, tokens)) isLed = true;
    const isOfList =
      !isLikely(stated, 'adj') &&
      (piece.role === stated.role || isSmall(piece, 'join') || isSmall(piece, 'or'));
    if (piece !== stated && !PASSED.has(piece.role) && !isOfList) return false;
    if (isSmall(piece, 'join') && !isOfList) return false;
    if (isPaused(tokens, piece)) return false;
  }
  return false;
}

// "Swelling up to the ankle": how far it goes.
const isExtent = (tokens: readonly Token[], from: number, to: number): boolean =>
  /\b(up to|down to|far as|past)\b/.test(
    tokens
      .slice(from, to)
      .map(({ word }) => word)
      .join(' '),
  );

// "Nothing wrong with the elbow".
const leads = (piece: Piece, tokens: readonly Token[]): boolean =>
  startsWithPreposition([piece], tokens) ||
  isSmall(piece, 'preposition') ||
  tokens[piece.from]?.word === 'with';

// "Dressing on the".
const endsLeading = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  tokens.slice(from + 1, to).some(({ word }) => /^(on|to|over|in|at|across|around|from)$/.test(word));
