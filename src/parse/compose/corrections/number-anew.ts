// "Make that ninety four": a bare number takes the place of the main number of a sign, or of what was said last.

import type { Vital } from '../../../terms/index.ts';
import { isNear } from '../../pieces/figure-anew.ts';
import { figureIn, likelyTag, type Piece } from '../../pieces/piece.ts';
import { isTenths } from '../../pieces/tenths.ts';
import { isPaused } from '../../span.ts';
import type { Talk } from '../talk.ts';
import { pressureAt } from '../vitals/two-figures.ts';
import { vitalFromFigure } from '../vitals/vital.ts';
import type { Changed } from './changes.ts';
import { mainOf } from './main-figure.ts';
import { signMeant } from './sign-meant.ts';

/** The change that a bare number makes; null where it is none of a sign, or of something else than was said last. */
export function numberAnew(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const pressure = pressureAnew(talk, pieces);
  if (pressure !== null) return pressure;
  const last = pieces.findLastIndex(({ role }) => role === 'figure' || role === 'time');
  const sign = signMeant(talk, pieces);
  const vital = vitalMeant(talk, pieces) ?? signOf(sign);
  const tenths = vital === 'temperature' ? tenthsAt(talk, pieces, last) : 0;
  const at = tenths === 0 ? last : last - 1;
  const [before, figure] = [pieces[at - 1], pieces[at]];
  const whole = figure === undefined ? null : figureIn(figure);
  const value = whole === null ? null : Math.round((whole + tenths) * 10) / 10;
  // "Correction, thirty five nine": nobody may take the last of two numbers.
  if (sign === 'other' || (before?.role === 'figure' && !isPaused(talk.tokens, before))) return null;
  if (figure === undefined || value === null || isOfAThing(talk, figure)) return null;
  if (countsElse(talk, figure, pieces[last + 1])) return null;
  const read = vital === null ? null : vitalFromFigure(vital, value);
  const target = vital === null ? {} : { kind: 'vital' as const, vital };
  const isNewUnit = vital === 'glucose' || vital === 'temperature';
  const isNew = vital !== null && sign !== null && isSlip(talk, pieces) && !isOfLast(talk, vital);
  if (vital === null || read === null || (sign !== null && !isNewUnit && !isNew))
    return [{ change: { change: 'number', value }, target: sign === null ? {} : target }];
  const basis = { statement: read.statement, known: read.known, doubt: [] };
  const change = { change: 'statement', statement: read.statement } as const;
  return [{ change, target, basis, ...(isNew ? { isNew } : {}) }];
}

// "I misread it, one twenty three on eighty four".
function pressureAnew(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const last = talk.context.said.at(-1);
  if (last?.kind !== 'vital' || last.vital !== 'blood-pressure') return null;
  const at = pieces.findIndex((piece) => figureIn(piece) !== null);
  const read = pressureAt(pieces, talk.tokens, at);
  const { kind, vital } = last;
  return read === null
    ? null
    : [{ change: { change: 'statement', statement: read.statement }, target: { kind, vital } }];
}

/** The tenths of a temperature whose figure ends at `last` ("thirty eight five"); 0 where there are none. */
function tenthsAt(talk: Talk, pieces: readonly Piece[], last: number): number {
  const [whole, part] = [pieces[last - 1], pieces[last]];
  if (whole === undefined || part === undefined) return 0;
  return isTenths(whole, part, talk.tokens) ? (figureIn(part) ?? 0) / 10 : 0;
}

const COUNTED =
  /^(litres?|liters?|l|mils?|mls?|milligrams?|mg|micrograms?|mcg|mikes|mics|grams?|g|minutes?|hours?|kilos?|kg|metres?|meters?|feet|foot|puffs?|units?)$/;

// "Sorry, on two litres": so much of something, and no saturation of two.
const isOfAThing = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  COUNTED.test(tokens[to]?.word ?? '') ||
  (tokens[from - 1]?.word === 'on' && !/^(hang|hold)$/.test(tokens[from - 2]?.word ?? ''));

// "Make that two people": what is named behind a number that cannot be the sign's is counted with it.
function countsElse({ context, tokens }: Talk, figure: Piece, next: Piece | undefined): boolean {
  const last = context.said.at(-1);
  const was = last?.kind === 'vital' ? mainOf(last) : null;
  const now = figureIn(figure);
  if (next === undefined || isPaused(tokens, figure) || was === null || now === null) return false;
  return (next.role === 'unknown' || next.role === 'mood') && !isNear(was, now);
}

/** What a speaker says who has to look again, and not who puts an earlier reading right. */
const SLIP = /^(no|wait|sorry|hang|hold|on|i|mean|er|um|uh|a|second|sec|minute)$/;

// "Resps are now, sorry, twenty four" is a reading of now; "the pulse should be ninety" is none.
function isSlip({ tokens, clauses }: Talk, pieces: readonly Piece[]): boolean {
  const clause = clauses.find((one) => one.pieces.some((piece) => pieces.includes(piece)));
  const words = (clause?.pieces ?? []).filter(({ role }) => role === 'correction');
  return (
    words.length > 0 &&
    words.every(({ from, to }) => tokens.slice(from, to).every(({ word }) => SLIP.test(word)))
  );
}

const isOfLast = ({ context }: Talk, vital: Vital): boolean => {
  const last = context.said.at(-1);
  return last?.kind === 'vital' && last.vital === vital;
};

const signOf = (piece: Piece | 'other' | null): Vital | null =>
  piece === null || piece === 'other' ? null : (likelyTag(piece, 'vital') as Vital | null);

function vitalMeant(talk: Talk, pieces: readonly Piece[]): Vital | null {
  const named = pieces.find((piece) => piece.role === 'vital');
  if (named !== undefined) return likelyTag(named, 'vital') as Vital | null;
  if (signMeant(talk, pieces) !== null) return null;
  const last = talk.context.said.find((statement) => statement.kind === 'vital')?.vital ?? null;
  // A bare number for these needs the unit worked out again; the others keep what else was said of them.
  return last === 'glucose' || last === 'temperature' ? last : null;
}
