// "Sorry, thirteen, he opens his eyes to voice", "make that seventy six his sleeve slipped": where the figure that puts a sign right
// ends, and other things are said.

import type { Clause } from '../../clauses/clause.ts';
import { endsAnew, isNear } from '../../pieces/figure-anew.ts';
import { figureIn, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { isChatter } from '../light.ts';
import type { Talk } from '../talk.ts';
import { mainOf } from './main-figure.ts';

/** How many pieces put the last sign right before other things are said; 0 for none. */
export function figureAlone({ context, tokens }: Talk, { pieces }: Clause): number {
  const last = context.said.at(-1);
  if (last?.kind !== 'vital') return 0;
  const at = pieces.findIndex((piece) => !leads(piece));
  const figure = pieces[at];
  if (figure === undefined || at === pieces.length - 1) return 0;
  const isPressure = figure.role === 'vital' && marked(figure, 'bare') && last.vital === 'blood-pressure';
  const value = isPressure ? (figure.islands[0]?.slots[0]?.value ?? null) : figureIn(figure);
  if (isPaused(tokens, figure)) return figure.role === 'figure' ? at + 1 : 0;
  const was = mainOf(last);
  const isSame = isPressure || figure.role === 'figure' || figure.role === 'time';
  const isLike = was !== null && value !== null && isNear(was, value);
  return isSame && isLike && endsAnew(pieces, at, tokens) ? at + 1 : 0;
}

const leads = (piece: Piece): boolean =>
  piece.role === 'correction' || isChatter(piece) || marked(piece, 'plain');

/** True for words straight behind the figure that tell why it was misread, or say sorry. */
export function tellsWhy({ tokens }: Talk, pieces: readonly Piece[]): boolean {
  const [first] = pieces;
  if (first === undefined || tokens[first.from - 1]?.pause !== '') return false;
  const word = tokens[first.from]?.word ?? '';
  // "The probe slipped", and not "the left knee is swollen".
  return OWN.test(word) || (THING.test(word) && !pieces.some(({ role }) => role === 'site'));
}

const OWN = /^(sorry|my|mine|i|we|because|cause)$/;
const THING = /^(the|it|that)$/;
