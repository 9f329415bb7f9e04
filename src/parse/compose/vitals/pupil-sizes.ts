// "Pupils unequal. Left six millimetres, right three": sizes by their sides, after the pupils were named.

import type { VitalStatement } from '../../../terms/index.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { change } from '../corrections/correction.ts';
import { attributesOf } from '../findings/attributes.ts';
import { sideAfter } from '../sites/said-side.ts';
import { place, state, type Talk } from '../talk.ts';
import { BOUNDS, isWithin } from './vital-read.ts';

const MM_PER_CM = 10;

/** States the sizes that begin at `i`, each behind its side, where the pupils were said last; returns how many pieces it took (0: none). */
export function statePupilSizes(talk: Talk, pieces: readonly Piece[], i: number): number {
  const [last, ...others] = talk.context.said;
  if (!talk.context.isSaidLast || last?.kind !== 'vital' || last.vital !== 'pupils' || others.length > 0)
    return 0;
  const first = sizeAt(talk, pieces, i);
  if (first === null) return 0;
  const second = sizeAt(talk, pieces, past(talk, pieces, first.end));
  const isPair = second !== null && second.side !== first.side;
  const end = isPair ? second.end : first.end;
  // "Left six in the morning" says more than a size.
  if (end < pieces.length && !isPaused(talk.tokens, pieces[end - 1] as Piece)) return 0;
  const sizes = { [first.side]: first.mm, ...(isPair ? { [second.side]: second.mm } : {}) };
  const leftMm = sizes.left ?? last.value.leftMm;
  const rightMm = sizes.right ?? last.value.rightMm;
  const unlike = leftMm !== undefined && rightMm !== undefined && leftMm !== rightMm;
  const statement: VitalStatement = {
    kind: 'vital',
    vital: 'pupils',
    value: {
      ...last.value,
      ...(unlike ? { equal: false } : {}),
      ...(leftMm === undefined ? {} : { leftMm }),
      ...(rightMm === undefined ? {} : { rightMm }),
    },
  };
  // Sizes that differ belie "equal", and nobody knows which holds.
  const doubt = unlike && last.value.equal === true ? ['They were called equal: which holds?'] : [];
  const span = { from: pieces[i]?.from ?? 0, to: pieces[end - 1]?.to ?? 0 };
  const known = { vital: 'carried' } as const;
  if (isTurned(talk, pieces, i)) {
    const basis = { statement, known, doubt };
    change(
      talk,
      [{ change: { change: 'statement', statement }, target: { kind: 'vital', vital: 'pupils' }, basis }],
      span,
    );
  } else state(talk, [{ statement, known, doubt, ...span }]);
  place(talk, span);
  return end - i;
}

// "Left five, right three, no, other way round, left three and right five".
function isTurned({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const last = pieces.slice(0, i).findLastIndex(({ role }) => role === 'vital' || role === 'figure');
  const between = tokens.slice(pieces[last + 1]?.from, pieces[i]?.from).map(({ word }) => word);
  return /\b(no|nah|nope|sorry|wait|actually|correction|way (round|around))\b/.test(between.join(' '));
}

interface Size {
  readonly side: 'left' | 'right';
  readonly mm: number;
  /** past its last piece */
  readonly end: number;
}

function sizeAt({ tokens }: Talk, pieces: readonly Piece[], i: number): Size | null {
  const piece = pieces[i];
  const side = piece?.role === 'side' ? sideAfter(piece) : null;
  if (piece === undefined || (side !== 'left' && side !== 'right')) return null;
  let at = i + 1;
  while (isLead(tokens, pieces[at])) at++;
  const size = pieces[at];
  const cm = size === undefined ? undefined : attributesOf(size)?.size?.value;
  const mm = cm === undefined ? (size === undefined ? null : figureIn(size)) : cm * MM_PER_CM;
  return isWithin(mm, BOUNDS.millimetres) ? { side, mm, end: at + 1 } : null;
}

const isLead = (tokens: Talk['tokens'], piece: Piece | undefined): boolean =>
  piece !== undefined &&
  piece.to - piece.from === 1 &&
  /^(is|at|about|one|pupil|around)$/.test(tokens[piece.from]?.word ?? '') &&
  !(figureIn(piece) !== null && isPaused(tokens, piece));

const past = ({ tokens }: Talk, pieces: readonly Piece[], at: number): number =>
  /^(and|but|the)$/.test(tokens[pieces[at]?.from ?? -1]?.word ?? '') ? at + 1 : at;
