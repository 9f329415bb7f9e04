// What somebody looks for is not found by that: "keep checking that leg for bleeding", "felt his scalp for bumps".

import { isJoin } from '../compose/sayings/index.ts';
import { isSmall, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { begin, type Place, type Turn } from './place.ts';

const LOOKS =
  /^(check|watch|monitor|look|feel|inspect|examine|assess|palpate|search|scan|sweep|screen)(s|es|ed|d|ing)?$|^(felt|swept|palpating|assessing|examining|eye|eyes)$/;

/** What may stand between the looking, the place and the "for". */
const BETWEEN: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'attribute', 'same', 'talk']);

/** At the "for" behind a place that is looked at: what follows is supposed. */
export function lookedFor({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (!isFor(piece, tokens) || draft.mood === 'question') return null;
  const next = pieces
    .slice(i + 1)
    .find(({ role }) => role !== 'attribute' && role !== 'small' && role !== 'asking');
  return next?.role === 'finding' && looksBefore(pieces, i, tokens) ? begin('supposing') : null;
}

/** "Felt the belly for guarding and it's rigid", "inspect the back for wounds, graze over the flank": what was found. */
export function foundThere({ piece, pieces, i, tokens, draft }: Place): Turn | 'stay' | null {
  const [first] = draft.pieces;
  if (draft.mood !== 'supposing' || first === undefined || !isFor(first, tokens)) return null;
  // "For any deformity" asks nobody.
  if (piece.role === 'asking' && !isPaused(tokens, first)) return 'stay';
  const before = pieces[i - 1];
  if (before === undefined) return null;
  if (isPaused(tokens, before)) return begin('statement');
  return isJoin(before) && (isSmall(piece, 'person') || isSmall(piece, 'exists') || isIt(piece, tokens))
    ? begin('statement')
    : null;
}

const isFor = ({ role, from }: Piece, tokens: readonly Token[]): boolean =>
  role === 'small' && tokens[from]?.word === 'for';

const isIt = ({ from }: Piece, tokens: readonly Token[]): boolean =>
  /^(it|that|this|they|there)$/.test(tokens[from]?.word ?? '');

function looksBefore(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieces[k];
    if (piece === undefined || isPaused(tokens, piece)) return false;
    if (tokens.slice(piece.from, piece.to).some(({ word }) => LOOKS.test(word))) return true;
    if (!BETWEEN.has(piece.role)) return false;
  }
  return false;
}
