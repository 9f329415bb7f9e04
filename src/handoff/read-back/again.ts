// What was read back wrong, or not at all, is said once more and asked back once more; nothing else is.

import { type Chunk, chunks } from '../radio/chunks.ts';
import { bare, type RadioLine } from '../radio/line.ts';
import { capital } from '../sentences/list.ts';
import type { ReadBackRow } from './compare.ts';

/** "I say again" and "that is correct": ICAO Annex 10 volume II, prowords (from memory). */
const OPENING = bare('I say again');
const ALL_RIGHT = bare('That is correct');

/** Pieces with the values that did not come back right; where all did, that they did. */
export function sayAgain(rows: readonly ReadBackRow[]): { readonly chunks: readonly Chunk[] } {
  const lines = rows
    .filter(({ kind }) => kind !== 'matched')
    .map(
      ({ value }): RadioLine => ({
        words: `${value.name === 'red-criterion' ? 'Red criterion: ' : ''}${capital(value.spoken)}`,
        entries: value.entries,
        trust: value.trust,
      }),
    );
  return { chunks: chunks(lines.length === 0 ? [ALL_RIGHT] : [OPENING, ...lines, bare('Read back')]) };
}
