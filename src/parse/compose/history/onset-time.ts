// "Started half an hour ago", "the pain came on at one thirty": the phrase holds its own time, and that is when it began.

import type { Clause } from '../../clauses/clause.ts';
import type { FilledSlot } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import type { SpokenTime } from '../../times/index.ts';
import type { Token } from '../../token.ts';
import type { Talk } from '../talk.ts';

export interface OnsetTime {
  readonly time: SpokenTime;
  /** the words of the time alone: a "pain" before them is there now */
  readonly from: number;
  readonly to: number;
}

/** The times that stand at the end of what a clause tells of a beginning. */
export const onsetTimes = ({ tokens }: Talk, { pieces }: Clause): readonly OnsetTime[] =>
  pieces.flatMap((piece) => timeOfOnset(tokens, piece) ?? []);

function timeOfOnset(tokens: readonly Token[], piece: Piece): OnsetTime | null {
  if (piece.role !== 'history') return null;
  const slot = readingOf(piece, 'history.onset')?.slots.find(({ time }) => time !== null);
  if (slot === undefined || slot.time === null || isBounded(tokens, slot)) return null;
  return { time: slot.time, from: slot.from, to: slot.to };
}

// "Over an hour ago", "between one and two", "before noon": the time only bounds it. "One thirty yesterday" is no time of today.
const isBounded = (tokens: readonly Token[], { from, to }: FilledSlot): boolean =>
  /^(over|under|between|before|after|until|early|late|earlier|sometime|time|to|or)$/.test(
    tokens[from - 1]?.word ?? '',
  ) ||
  (tokens[to - 1]?.pause === '' &&
    /^(yesterday|last|on|or|to|today's|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/.test(
      tokens[to]?.word ?? '',
    ));
