// "Heart rate was one twenty ten minutes ago, now down to a hundred": a figure with "now" is of the sign before it. "Pulse is
// thready, about one forty": so is one after a rate of which only was said what it is like; and "ninety five at ten past" one
// with a time of its own.

import type { VitalStatement } from '../../../terms/index.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import { isPaused, pauseAfter } from '../../span.ts';
import { isChatter } from '../light.ts';
import { place, state, type Talk } from '../talk.ts';
import { isBounded, opensRange } from './inexact.ts';
import { vitalFromFigure } from './vital.ts';

/** States the figure at `i` as the latest sign's reading; false where it is not said so. */
export function stateLaterFigure(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  const last = talk.context.said.at(-1);
  const frame = talk.frames.at(-1);
  if (piece === undefined || last?.kind !== 'vital' || last !== sayingOf(frame)) return false;
  const value = piece.role === 'figure' || piece.role === 'time' ? figureIn(piece) : null;
  const breath = breathOf(talk, pieces, i);
  const others = breath.filter((one) => one !== piece);
  const isLight = (one: Piece): boolean => isChatter(one) || isWord(talk, one, LEADING) || isTime(talk, one);
  if (value === null || !others.every(isLight) || isOfAThing(talk, piece)) return false;
  const read = vitalFromFigure(last.vital, value);
  const open = openRate(last);
  const [from, to] = [breath[0]?.from ?? piece.from, breath.at(-1)?.to ?? piece.to];
  if (read === null || opensRange(talk.tokens, pieces, i) || isBounded(talk.tokens, from, piece.from))
    return false;
  if (open !== null && read.statement.vital === last.vital) {
    talk.frames.pop();
    const first = talk.tokens.findIndex((token) => token.from === frame?.span[0]);
    const statement = { ...read.statement, value: { ...read.statement.value, ...open } } as VitalStatement;
    state(talk, [{ statement, known: read.known, from: Math.max(0, first), to }]);
  } else if (others.some((one) => isWord(talk, one, NOW) || isTime(talk, one)))
    state(talk, [{ ...read, known: { ...read.known, vital: 'carried' }, from, to }]);
  else return false;
  place(talk, { from, to });
  return true;
}

const NOW = /^now$/;
const LEADING = /^(now|maybe|probably|perhaps|rate)$/;

const isTime = ({ times }: Talk, { role, from }: Piece): boolean =>
  role === 'time' && times.some((time) => time.piece.from === from);

// "Now on two": so many litres, and no saturation.
const isOfAThing = ({ tokens }: Talk, { from }: Piece): boolean =>
  /^(on|of|for|in|with|over|every)$/.test(tokens[from - 1]?.word ?? '');

/** What a pulse or a breathing is like, where its rate was not said with it; else null. */
const openRate = (last: VitalStatement): object | null =>
  (last.vital === 'pulse' || last.vital === 'respirations') && last.value.rate === undefined
    ? last.value
    : null;

const sayingOf = (frame: Talk['frames'][number] | undefined) =>
  frame?.frame === 'statement' ? frame.statement : undefined;

/** The pieces between the pauses around piece `i`. */
function breathOf({ tokens }: Talk, pieces: readonly Piece[], i: number): readonly Piece[] {
  let [from, to] = [i, i];
  while (from > 0 && !isPaused(tokens, pieces[from - 1] as Piece)) from--;
  while (to < pieces.length - 1 && pauseAfter(tokens, pieces[to] as Piece) === '') to++;
  return pieces.slice(from, to + 1);
}

const isWord = ({ tokens }: Talk, { from, to }: Piece, words: RegExp): boolean =>
  to - from === 1 && words.test(tokens[from]?.word ?? '');
