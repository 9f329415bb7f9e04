// "Pain was seven before the morphine, now it's a two": a figure with a "now" is of the sign that was said before it of then.

import type { Vital } from '../../../terms/index.ts';
import { isNear } from '../../pieces/figure-anew.ts';
import { figureIn, isSmall, likelyTag, type Piece, tagIn } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { place, state, type Talk } from '../talk.ts';
import { vitalFromFigure } from './vital.ts';

const LEAD = /^((and|but|so) )?now ((it is|is|it has|gone|down|come|to|at|about|around|just|only|a|an) )*$/;

interface Former {
  readonly vital: Vital;
  readonly value: number;
}

/** States the figure at `i` so; false where it is of no sign that was. */
export function stateNow(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const { tokens, clauses } = talk;
  const [piece, next] = [pieces[i], pieces[i + 1]];
  const value = piece?.role === 'figure' ? figureIn(piece) : null;
  if (piece === undefined || value === null || !isNowNear(talk, piece)) return false;
  if (next !== undefined && !isPaused(tokens, piece) && !isSmall(next, 'join')) return false;
  const said = clauses.flatMap((clause) => clause.pieces).filter(({ to }) => to <= piece.from);
  const first = said.findLastIndex(({ from }) => /^(now|and|but|so)$/.test(tokens[from]?.word ?? ''));
  const start = said[first]?.from ?? piece.from;
  if (!LEAD.test(`${saidIn(tokens, start, piece.from)} `)) return false;
  const before = said.slice(0, first);
  const former = before.map((_, k) => formerAt(talk, before, k)).findLast((one) => one !== null);
  if (former === undefined || former === null) return false;
  // A score falls as far as it will; of other signs a figure far from the one before counts something else.
  if (former.vital !== 'pain-score' && !isNear(former.value, value)) return false;
  const read = vitalFromFigure(former.vital, value);
  if (read === null) return false;
  const mine = [...said.slice(first), piece].filter((one) => pieces.includes(one));
  state(talk, [{ ...read, known: { ...read.known, vital: 'carried' }, ...spanned(mine) }]);
  place(talk, spanned(mine));
  return true;
}

// The most words between the "now" and its figure: "now it has come down to about a".
const MOST_WORDS = 8;

const isNowNear = ({ tokens }: Talk, { from }: Piece): boolean =>
  tokens.slice(Math.max(0, from - MOST_WORDS), from).some(({ word }) => word === 'now');

// "Pain was seven", "pulse was one ten", with no place of its own; and the figure it had.
function formerAt({ tokens }: Talk, said: readonly Piece[], k: number): Former | null {
  const [sign, ...rest] = said.slice(k);
  if (sign === undefined || said.some(({ role }) => role === 'site')) return null;
  const [slot] = sign.islands[0]?.slots ?? [];
  if (sign.role === 'vital' && slot !== undefined) {
    const vital = likelyTag(sign, 'vital') as Vital | null;
    const isWas = WAS.test(`${saidIn(tokens, slot.from - 1, slot.from)} `);
    return vital !== null && isWas && slot.to === sign.to ? { vital, value: slot.value } : null;
  }
  if (tagIn(sign, 'findings.finding', 'finding') !== 'pain') return null;
  const figure = rest.find(({ role }) => role === 'figure');
  if (figure === undefined || !WAS.test(`${saidIn(tokens, sign.to, figure.from)} `)) return null;
  return { vital: 'pain-score', value: figureIn(figure) ?? 0 };
}

const WAS = /^(was|were|had been) ((at|about|a|an) )*$/;
