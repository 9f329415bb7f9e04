// A clause is a run of pieces that is meant one way: stated, asked, answered, supposed, planned, told to somebody.

import type { Piece } from '../pieces/piece.ts';
import type { Pause } from '../token.ts';

export type Mood =
  | 'statement'
  | 'question'
  | 'answer'
  | 'supposing'
  | 'plan'
  | 'instruction'
  | 'others'
  | 'own'
  | 'past'
  | 'correction'
  | 'strike'
  | 'mark'
  | 'command'
  | 'problem'
  | 'patient';

export interface Clause {
  readonly pieces: readonly Piece[];
  readonly mood: Mood;
  /** clauses between two full stops share a number */
  readonly sentence: number;
  /** how the clause ended */
  readonly pause: Pause;
}
