// The words that name a topic before what is told of it ("allergies: sulfa drugs"): they are a part of that, and no note.

import type { Topic } from '../../../terms/index.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import type { Talk } from '../talk.ts';

/** The piece straight before token `before` that names this topic, in whichever clause it stands. */
export function headingOf({ clauses }: Talk, topic: Topic, before: number): Piece | undefined {
  const names = (piece: Piece): boolean =>
    piece.to === before && piece.role === 'history' && marked(piece, 'topic', topic);
  return clauses.find(({ pieces }) => pieces.some(names))?.pieces.find(names);
}
