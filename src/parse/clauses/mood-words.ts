// The mood that a word of the grammar gives by itself ("if", "I'm going to", "his brother").

import { likelyTag, type Piece } from '../pieces/piece.ts';
import type { Mood } from './clause.ts';

/** What the grammar's `mood` tag may say: a clause's mood, or `later` for what is put off. */
type SaidMood = Mood | 'later';

/** The mood of a piece that is one of these words, or null. */
export const moodOf = (piece: Piece): SaidMood | null =>
  piece.role === 'mood' ? (likelyTag(piece, 'mood') as SaidMood | null) : null;
