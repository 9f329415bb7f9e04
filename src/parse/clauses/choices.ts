// "Which knee hurts, left or right", "left or right knee hurting": what is to be chosen from is asked after, and found nowhere.

import { marked, type Piece } from '../pieces/piece.ts';
import { isChoice } from '../pieces/which-of-two.ts';
import type { Token } from '../token.ts';
import type { Mood } from './clause.ts';

/** The mood of a statement that leaves open which of two sides it is said of: asked, or kept in words; null for any other. */
export function moodOfChoice(pieces: readonly Piece[], tokens: readonly Token[]): Mood | null {
  const at = pieces.findIndex(isChoice);
  if (at < 0 || !pieces.some(({ role }) => role === 'finding' || role === 'csm')) return null;
  // "No swelling of the left or right knee" denies it of both.
  if (pieces.some((piece) => marked(piece, 'negation', 'before') || marked(piece, 'present', 'false')))
    return null;
  const isYours = tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).some(({ word }) => word === 'your');
  return isYours || at === pieces.length - 1 ? 'question' : 'supposing';
}
