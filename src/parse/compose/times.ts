// The time said in a sentence ("at fourteen twelve", "ten minutes ago"), as an instant.

import type { Clause } from '../clauses/clause.ts';
import { hasTag } from '../islands/island.ts';
import { type Piece, readingOf } from '../pieces/piece.ts';
import { resolveTime, type SpokenTime } from '../times/index.ts';
import type { SaidTime, Talk } from './talk.ts';

/**
 * The spoken time that goes with a clause: its own, or the one that stands alone in its sentence; undefined where none
 * was said.
 */
export function timeFor(talk: Talk, clause: Clause): SaidTime | undefined {
  const own = timesIn(clause);
  const sentence = talk.clauses.filter((one) => one.sentence === clause.sentence);
  const all = own.length > 0 ? own : sentence.flatMap(timesIn);
  if (all.length !== 1 && own.length === 0) return undefined;
  const piece = all.at(-1);
  const time = piece === undefined ? null : spokenIn(piece);
  if (piece === undefined || time === null) return undefined;
  const instant = resolveTime(time, talk.utterance.heardAt, talk.utterance.zone);
  return { instant, piece, words: own.length > 0 ? piece : null };
}

const timesIn = (clause: Clause): readonly Piece[] => clause.pieces.filter((piece) => isTime(piece, clause));

function isTime(piece: Piece, clause: Clause): boolean {
  const time = piece.role === 'time' ? spokenIn(piece) : null;
  if (time === null) return false;
  const island = readingOf(piece, 'times.when');
  if (island === null || !hasTag(island, 'ago-only') || time.kind !== 'clock') return true;
  // A bare clock time in a correction may be the time that is corrected.
  if (clause.mood === 'correction')
    return clause.pieces.every(({ role }) => role === 'time' || role === 'small' || role === 'correction');
  // It counts beside care ("tourniquet, fourteen twelve"); elsewhere it may be any two numbers.
  return clause.pieces.some((one) => one.role === 'care') && time.twentyFour;
}

const spokenIn = (piece: Piece): SpokenTime | null =>
  readingOf(piece, 'times.when')?.slots.find((slot) => slot.time !== null)?.time ?? null;
