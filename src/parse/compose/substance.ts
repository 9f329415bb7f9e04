// Which parts say something by themselves.

import type { Role } from '../pieces/piece.ts';

/** A clause that leaves one of these unplaced is kept in words. */
export const SUBSTANCE: ReadonlySet<Role> = new Set([
  'unknown',
  'vital',
  'history',
  'care',
  'csm',
  'limbs',
  'finding',
  'site',
  'figure',
  'attribute',
  'time',
  'same',
  'problem',
  'mark',
]);
