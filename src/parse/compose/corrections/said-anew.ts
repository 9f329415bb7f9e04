// What the words of a correction give by themselves: a finding's name, or a yes or no.

import { FINDINGS, type Finding } from '../../../terms/index.ts';
import { marked, type Piece, tagIn } from '../../pieces/piece.ts';

const isFinding = (word: string | null): word is Finding =>
  (FINDINGS as readonly (string | null)[]).includes(word);

/** The first finding that these pieces name, or null. */
export const findingIn = (pieces: readonly Piece[]): Finding | null =>
  pieces.map((piece) => tagIn(piece, 'findings.finding', 'finding')).find(isFinding) ?? null;

/** "Correction, absent" and "correction, present": the answer alone, turned; null where more or less is said. */
export function presenceIn(pieces: readonly Piece[]): boolean | null {
  const said = pieces.filter(({ role }) => role !== 'talk');
  if (said.length > 2) return null;
  const denies = (piece: Piece): boolean =>
    marked(piece, 'negation', 'after') ||
    marked(piece, 'negation', 'before') ||
    marked(piece, 'answer', 'no');
  if (said.some(denies)) return false;
  return said.some((piece) => marked(piece, 'there') || marked(piece, 'answer', 'yes')) ? true : null;
}
