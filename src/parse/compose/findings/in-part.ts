// Whether somebody can do only a part of a movement: "can lift it a little", "bends it halfway".

import { readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, pieceOf, wordsOf } from '../sites/item.ts';

/** True where the words from item `i` to the next pause say so. */
export function isInPart(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  for (const item of items.slice(i)) {
    const words = wordsOf(item);
    const piece = pieceOf(item);
    if (piece !== null && readingOf(piece, 'findings.severity') !== null) return true;
    if (tokens.slice(words.from, words.to).some(({ word }) => PARTLY.has(word))) return true;
    if (isPaused(tokens, words)) return false;
  }
  return false;
}

const PARTLY: ReadonlySet<string> = new Set([
  'halfway',
  'partly',
  'partway',
  'barely',
  'hardly',
  'just',
  'only',
  'some',
  'degrees',
]);
