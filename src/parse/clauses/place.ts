// A piece in its place within a clause, and how it may turn that clause's mood.

import { type Piece, readingOf } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import type { Mood } from './clause.ts';
import type { Draft } from './draft.ts';

/** A piece in its place, and what was said before it. */
export interface Place {
  readonly piece: Piece;
  readonly pieces: readonly Piece[];
  readonly i: number;
  readonly tokens: readonly Token[];
  /** the clause in hand says something already */
  readonly full: boolean;
  /** the clause in hand asks something */
  readonly asked: boolean;
  /** an earlier question waits for its answer */
  readonly waiting: boolean;
  /** some words of the utterance may be for the problem list, or turn to another patient */
  readonly addressed: boolean;
  readonly draft: Draft;
}

/** `begin`: a clause of this mood begins; `become`: the clause in hand is of this mood after all. */
export interface Turn {
  readonly turn: 'begin' | 'become';
  readonly mood: Mood;
}

/** A rule's answer: a turn, `stay` where the piece goes on as it was, or null where the next rule decides. */
export type Rule = (place: Place) => Turn | 'stay' | null;

export const begin = (mood: Mood): Turn => ({ turn: 'begin', mood });
export const become = (mood: Mood): Turn => ({ turn: 'become', mood });

/** True where the piece may be a yes or a no. */
export const isAnswer = (piece: Piece): boolean => readingOf(piece, 'talk.answer') !== null;
