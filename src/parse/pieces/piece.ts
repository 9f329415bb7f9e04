// A piece is a stretch of words with the part it most likely plays; other readings of the same words stay at hand.

import { hasTag, type Island, tagOf } from '../islands/island.ts';
import type { Span } from '../span.ts';

export type Role =
  | 'correction'
  | 'strike'
  | 'mark'
  | 'command'
  | 'problem'
  | 'patient'
  | 'vital'
  | 'history'
  | 'ask'
  | 'care'
  | 'csm'
  /** says how a limb's check before it was: "pulse in the left foot is weak" */
  | 'state'
  | 'limbs'
  | 'finding'
  | 'site'
  | 'same'
  | 'side'
  | 'part'
  | 'attribute'
  | 'time'
  | 'figure'
  | 'mood'
  | 'intention'
  | 'asking'
  | 'answer'
  | 'negation'
  | 'talk'
  | 'small'
  | 'unknown';

export interface Piece extends Span {
  readonly role: Role;
  /** most likely first; the first is the one the role comes from */
  readonly islands: readonly Island[];
  /** the same words are also plain talk, so this role holds only where something beside it asks for it */
  readonly weak: boolean;
}

/** The piece's reading from this rule or file of the grammar, or null. */
export function readingOf({ islands }: Piece, name: string): Island | null {
  for (const island of islands) if (island.rule === name || island.file === name) return island;
  return null;
}

/** True where the words may be a small word of this kind: `article`, `preposition`, `link`, `join`, `person`, `before`. */
export const isSmall = (piece: Piece, kind: string): boolean => {
  const island = readingOf(piece, 'small.small');
  return island !== null && (hasTag(island, 'small', kind) || hasTag(island, kind));
};

/** True where any reading of the piece carries this tag. */
export function marked({ islands }: Piece, key: string, value?: string): boolean {
  for (const island of islands) if (hasTag(island, key, value)) return true;
  return false;
}

/** The value of this tag in the piece's reading from this rule or file, or null. */
export const tagIn = (piece: Piece, name: string, key: string): string | null => {
  const island = readingOf(piece, name);
  return island === null ? null : tagOf(island, key);
};

/** The value of this tag in the reading that the piece's role comes from, or null. */
export const likelyTag = (piece: Piece, key: string): string | null => {
  const [island] = piece.islands;
  return island === undefined ? null : tagOf(island, key);
};

/** True where the reading that the piece's role comes from carries this tag. */
export const isLikely = (piece: Piece, key: string, value?: string): boolean => {
  const [island] = piece.islands;
  return island !== undefined && hasTag(island, key, value);
};

/** The number that the piece is, where it may be a bare one, or null. */
export const figureIn = (piece: Piece): number | null =>
  readingOf(piece, 'small.figure')?.slots[0]?.value ?? null;
