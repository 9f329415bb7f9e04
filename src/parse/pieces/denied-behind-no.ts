// "Correction, no chest pain", "sorry no pelvic tenderness", "actually no asthma": a "no" behind words that take back denies the thing whose
// name follows it. "Sorry, no, the left knee" takes back, and so does "sorry no abdomen tender": nobody denies an adjective so.

import type { Token } from '../token.ts';
import { isLikely, marked, type Piece, type Role, tagIn } from './piece.ts';

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

/** What is often told as a bare name. */
const TOPICS: ReadonlySet<string> = new Set(['past-history', 'symptoms', 'medications', 'allergies']);

// "No he wasn't", "no takes warfarin" begin a sentence.
const BEGINS = /^(he|she|they|it|i|we|the|that|this|takes?|taking|on|has|had|have|got|is|was|allergic)$/;

/** What a "no" denies by its name. */
export interface DeniedBehind {
  /** pieces of the name, places among them */
  readonly pieces: readonly Piece[];
  /** a left or a right was said with it: then "no" may as well turn away from the other side */
  readonly isSided: boolean;
}

/** What the "no" straight before piece `i` denies; null where it denies nothing by its name. */
export function deniedBehindNo(
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): DeniedBehind | null {
  const first = pieces[i];
  if (first === undefined || tokens[first.from - 1]?.pause !== '') return null;
  if (first.role === 'history') return isBareName(first, tokens) ? { pieces: [first], isSided: false } : null;
  let end = i;
  while (isPlace(pieces[end]) && isJoined(pieces[end], tokens)) end++;
  const noun = pieces[end];
  if (end === i || noun === undefined) return null;
  const isNoun = noun.role === 'finding' ? !isLikely(noun, 'adj') && !noun.weak : noun.role === 'csm';
  const said = pieces.slice(i, end + 1);
  return isNoun ? { pieces: said, isSided: said.some(({ role }) => role === 'side') } : null;
}

const isPlace = (piece: Piece | undefined): boolean => piece !== undefined && PLACES.has(piece.role);

const isJoined = (piece: Piece | undefined, tokens: readonly Token[]): boolean =>
  piece !== undefined && tokens[piece.to - 1]?.pause === '';

const isBareName = (piece: Piece, tokens: readonly Token[]): boolean =>
  TOPICS.has(tagIn(piece, 'history', 'topic') ?? '') &&
  !marked(piece, 'takes') &&
  !BEGINS.test(tokens[piece.from]?.word ?? '');
