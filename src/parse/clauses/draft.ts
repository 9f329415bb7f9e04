// A clause while it is being put together, and whether it says anything yet.

import type { Piece, Role } from '../pieces/piece.ts';
import type { Mood } from './clause.ts';

export interface Draft {
  readonly pieces: Piece[];
  mood: Mood;
  readonly sentence: number;
}

// Pieces that say something by themselves; a new mood after one of them begins a new clause.
const SUBSTANTIAL: ReadonlySet<Role> = new Set([
  'vital',
  'history',
  'ask',
  'care',
  'csm',
  'finding',
  'site',
  'same',
  'figure',
  'unknown',
]);

/** True where one of these pieces says something by itself. */
export const isFull = (pieces: readonly Piece[]): boolean =>
  pieces.some(({ role, weak }) => role === 'ask' || (SUBSTANTIAL.has(role) && !weak));
