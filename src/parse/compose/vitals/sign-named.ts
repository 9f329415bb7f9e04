// "Pulse … ninety two", "pressure at two fifteen was ninety over sixty": a sign by its name, its figure apart from it.

import type { Vital } from '../../../terms/index.ts';
import { figureIn, likelyTag, marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { isClearlyParted } from '../../pieces/time-and-figure.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { isLight } from '../light.ts';
import { bear, type Talk } from '../talk.ts';
import { isBounded, opensRange } from './inexact.ts';
import { settle } from './settle.ts';
import { pressureAt } from './two-figures.ts';
import { vitalFromFigure, vitalOf } from './vital.ts';
import type { VitalRead } from './vital-read.ts';

/** States the sign that is named at `i`, whose figure may come after a pause or a few small words; returns how many pieces it took. */
export function stateHeading(talk: Talk, pieces: readonly Piece[], i: number): number {
  const heading = pieces[i];
  const vital = heading === undefined ? null : (likelyTag(heading, 'vital') as Vital | null);
  if (heading === undefined || vital === null) return 0;
  for (let k = i + 1; k < pieces.length; k++) {
    const piece = pieces[k];
    if (piece === undefined) break;
    // "Pressure at two fifteen was one oh eight on seventy".
    const two = vital === 'blood-pressure' ? pressureAt(pieces, talk.tokens, k) : null;
    if (two !== null) {
      settle(talk, { ...two, from: heading.from, to: pieces[k + 2]?.to ?? piece.to });
      return k - i + 3;
    }
    const pressure = vital === 'blood-pressure' && piece.role === 'vital' && marked(piece, 'bare');
    if (pressure || piece.role === 'figure') {
      const read = pressure ? pressureIn(piece) : fromFigure(vital, piece);
      // "Temp rechecked, thirty five four": a figure that runs straight on may belong to the number.
      const next = pieces[k + 1];
      if (next?.role === 'figure' && !next.weak && !isPaused(talk.tokens, piece)) return 0;
      // "At ten past two" bounds nothing.
      const isExact =
        !pieces
          .slice(i + 1, k)
          .some((one) => one.role !== 'time' && isBounded(talk.tokens, one.from, one.to)) &&
        !opensRange(talk.tokens, pieces, k) &&
        isPartedFromTime(talk.tokens, pieces[k - 1], piece);
      if (read === null || !isExact) return 0;
      settle(talk, { ...read, from: heading.from, to: piece.to });
      return k - i + 1;
    }
    if (!isLight(piece) && piece.role !== 'time') break;
  }
  // "Taking a pulse" … "ninety six": the next bare figure may be its answer.
  if (talk.context.asked === null) bear(talk, { asked: { about: 'vital', vital, named: true } });
  return 0;
}

// "Pressure at fifteen twenty was ninety four over sixty": the name comes first, the time between, and nothing is inferred.
function pressureIn(figures: Piece): VitalRead | null {
  const island = readingOf(figures, 'vitals.blood-pressure');
  const read = island === null ? null : vitalOf(island);
  return read === null ? null : { ...read, known: {} };
}

/** The vital sign that a bare figure gives under this name, or null. */
export function fromFigure(vital: Vital, figure: Piece): VitalRead | null {
  const value = figureIn(figure);
  return value === null ? null : vitalFromFigure(vital, value);
}

/** False for "at thirteen thirty one fifteen": nobody can tell where the time ends. */
export function isPartedFromTime(tokens: readonly Token[], before: Piece | undefined, sign: Piece): boolean {
  if (before?.role !== 'time' || isPaused(tokens, before)) return true;
  const time = readingOf(before, 'times.when')?.slots[0];
  const figure = sign.islands[0]?.slots[0];
  return time !== undefined && figure !== undefined && isClearlyParted(tokens, time, figure);
}
