// Two bare numbers before a bare pressure in a set of signs: pulse and breathing, where their sizes leave no other reading.

import type { Vital } from '../../../terms/index.ts';
import { figureIn, isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused, type Span } from '../../span.ts';
import { isChatter } from '../light.ts';
import { place, type Said, state, type Talk } from '../talk.ts';
import { vitalFromFigure } from './vital.ts';

// Between these a resting adult's pulse and breathing do not overlap (common practice, no source); outside them nothing is taken.
const LEAST_PULSE = 45;
const MOST_PULSE = 220;
const LEAST_BREATHS = 6;
const MOST_BREATHS = 40;

const WHICH = 'Pulse and breathing were not named: is it those?';

/** States "second set: one twenty four, thirty, ninety over fifty eight" before its pressure; each is shown as inferred and asked about. */
export function stateUnnamed(talk: Talk, pieces: readonly Piece[]): void {
  const at = pieces.findIndex((piece) => piece.role === 'vital');
  const pressure = pieces[at];
  if (pressure === undefined || !marked(pressure, 'bare') || !marked(pressure, 'vital', 'blood-pressure'))
    return;
  const before = pieces.slice(0, at);
  const figures = before.filter((piece) => isFigure(talk, piece));
  const [first, second, ...others] = figures;
  if (first === undefined || second === undefined || others.length > 0) return;
  if (!before.every((piece) => isFigure(talk, piece) || piece.role === 'time' || isChatter(piece))) return;
  if (!isPaused(talk.tokens, first) || !isPaused(talk.tokens, second) || !isSet(talk, first)) return;
  const [one, two] = [vitalBy(figureIn(first)), vitalBy(figureIn(second))];
  if (one === null || two === null || one === two) return;
  const said = [saidOf(one, first), saidOf(two, second)].flatMap((each) => each ?? []);
  if (said.length < 2) return;
  state(talk, said);
  place(talk, first, second);
}

// "One twenty four" may be a time of day: it is none where it was not taken for the set's.
const isFigure = ({ times }: Talk, piece: Piece): boolean =>
  (piece.role === 'figure' || (piece.role === 'time' && marked(piece, 'ago-only'))) &&
  figureIn(piece) !== null &&
  !times.some((time) => time.piece.from === piece.from);

function vitalBy(value: number | null): Vital | null {
  if (value === null) return null;
  if (value >= LEAST_PULSE && value <= MOST_PULSE) return 'pulse';
  return value >= LEAST_BREATHS && value <= MOST_BREATHS ? 'respirations' : null;
}

function saidOf(vital: Vital, figure: Piece): Said | null {
  const read = vitalFromFigure(vital, figureIn(figure) ?? 0);
  const { from, to } = figure;
  return read === null
    ? null
    : { ...read, known: { ...read.known, vital: 'inferred' }, doubt: [WHICH], from, to };
}

// The words that name a set stand before the numbers, in the same utterance.
const isSet = ({ clauses }: Talk, { from }: Span): boolean =>
  clauses.some(({ pieces }) => pieces.some((piece) => piece.to <= from && isSmall(piece, 'set')));
