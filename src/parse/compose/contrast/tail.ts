// Finds where a clause turns to the other side: "…, weak on the left", "… but not the left", "…, left is two".

import type { Statement } from '../../../terms/index.ts';
import { isSmall, marked, type Piece, type Role, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { State } from '../../states.ts';
import { saidIn, type Token } from '../../token.ts';
import { type SaidSide, sideAfter } from '../sites/said-side.ts';
import { figureOf, stateOf } from './state.ts';

export interface Tail {
  /** indexes of its first piece and past its last */
  readonly from: number;
  readonly to: number;
  readonly side: SaidSide;
  /** the piece that names the limb on that side ("reduced on the right foot"), where one does */
  readonly site: Piece | null;
  readonly state: State | null;
  /** seconds or a grade of strength, where a number is all that is said */
  readonly figure: number | null;
  /** "but" leads to it */
  readonly turned: boolean;
}

const MODEL: ReadonlySet<Role> = new Set(['csm', 'finding']);

/**
 * The first tail of a clause, or null. What it turns must stand before it, or be all that was said `last`.
 */
export function tailIn(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  last: readonly Statement[],
): Tail | null {
  for (const [i, piece] of pieces.entries()) {
    const side = piece.role === 'side' ? sideAfter(piece) : null;
    if (side === null || side === 'both' || side === 'midline') continue;
    const tail = tailAt(pieces, tokens, i, side);
    if (tail !== null && isTail(pieces, tokens, tail, last)) return tail;
  }
  return null;
}

function tailAt(pieces: readonly Piece[], tokens: readonly Token[], i: number, side: SaidSide): Tail | null {
  const siteAt = siteAfter(pieces, tokens, i);
  const end = (siteAt ?? i) + 1;
  if (siteAt === null && leadsOn(pieces, tokens, i)) return null;
  const said = stateBefore(pieces, tokens, i) ?? stateBehind(pieces, tokens, end);
  if (said === null) return null;
  const from = turnBefore(pieces, Math.min(said.at, i));
  return {
    from: from.at,
    to: Math.max(said.at + 1, end),
    side,
    site: siteAt === null ? null : (pieces[siteAt] ?? null),
    state: said.state,
    figure: said.figure,
    turned: from.turned,
  };
}

interface SaidState {
  readonly at: number;
  readonly state: State | null;
  readonly figure: number | null;
}

// "Bruising behind the right ear, none behind the left": the words that lead to the place may be a part's.
const isPassed = (piece: Piece): boolean =>
  piece.role === 'small' ||
  piece.role === 'part' ||
  isSmall(piece, 'person') ||
  (piece.role === 'asking' && piece.weak);

function stateBefore(pieces: readonly Piece[], tokens: readonly Token[], i: number): SaidState | null {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieces[k];
    if (piece === undefined || isPaused(tokens, piece)) return null;
    const state = stateOf(piece);
    const figure = state === null ? figureOf(piece) : null;
    if (state !== null || figure !== null)
      return isOfSideBefore(pieces, tokens, k) ? null : { at: boundBefore(pieces, k), state, figure };
    if (!isPassed(piece) || isSmall(piece, 'before') || isSmall(piece, 'join')) return null;
  }
  return null;
}

// "Three seconds left, under two on the right": the word that leads to the number belongs to it.
function boundBefore(pieces: readonly Piece[], at: number): number {
  const before = pieces[at - 1];
  return before !== undefined && isSmall(before, 'preposition') && figureOf(pieces[at] as Piece) !== null
    ? at - 1
    : at;
}

// "Right strong left weak": each state comes after its side.
function isOfSideBefore(pieces: readonly Piece[], tokens: readonly Token[], k: number): boolean {
  const before = pieces.slice(0, k).findLast((piece) => !isSmall(piece, 'link'));
  return before?.role === 'side' && before.weak && !isPaused(tokens, before);
}

function stateBehind(pieces: readonly Piece[], tokens: readonly Token[], end: number): SaidState | null {
  const last = pieces[end - 1];
  if (last === undefined || isPaused(tokens, last)) return null;
  for (let k = end; k < pieces.length; k++) {
    const piece = pieces[k];
    if (piece === undefined) return null;
    const [state, figure] = [stateOf(piece), figureOf(piece)];
    if (state !== null || figure !== null) return endsAt(pieces, tokens, k) ? { at: k, state, figure } : null;
    // "On the left it is weak".
    if (!(isPassed(piece) || isStop(piece)) || isPaused(tokens, piece)) return null;
  }
  return null;
}

// "The left is not tender" goes on to say what it is not.
const endsAt = (pieces: readonly Piece[], tokens: readonly Token[], k: number): boolean => {
  const [piece, next] = [pieces[k], pieces[k + 1]];
  if (piece === undefined || next === undefined || isPaused(tokens, piece)) return true;
  return isStop(next) || next.role === 'side' || (next.role === 'small' && endsAt(pieces, tokens, k + 1));
};

const isStop = (piece: Piece): boolean =>
  isSmall(piece, 'join') || (piece.role === 'negation' && stateOf(piece) === null);

/** The site straight after a side, or null. */
function siteAfter(pieces: readonly Piece[], tokens: readonly Token[], i: number): number | null {
  const [side, next] = [pieces[i], pieces[i + 1]];
  if (side === undefined || next?.role !== 'site' || isPaused(tokens, side)) return null;
  return i + 1;
}

// A side that leads to a part or to more words is no tail by itself.
function leadsOn(pieces: readonly Piece[], tokens: readonly Token[], i: number): boolean {
  const [side, next] = [pieces[i], pieces[i + 1]];
  if (side === undefined || next === undefined || isPaused(tokens, side)) return false;
  return next.role === 'part' || next.role === 'unknown' || next.role === 'csm' || next.role === 'attribute';
}

// The "but" or "and" before a tail belongs to it.
function turnBefore(pieces: readonly Piece[], at: number): { readonly at: number; readonly turned: boolean } {
  let from = at;
  let turned = false;
  for (let k = at - 1; k >= 0; k--) {
    const piece = pieces[k];
    if (piece === undefined || !isStop(piece)) break;
    turned = turned || piece.role === 'negation';
    from = k;
  }
  return { at: from, turned };
}

function isTail(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  tail: Tail,
  last: readonly Statement[],
): boolean {
  const before = pieces.slice(0, tail.from);
  const model = before.findLast(({ role }) => MODEL.has(role));
  // Alone it turns what was said last, and then it must be all of the clause.
  const isAlone = before.every(isPassed) && tail.site === null && tail.to === pieces.length;
  if (model === undefined && !(isAlone && last.length > 0)) return false;
  // "Radial strong on the right": the first side of a clause is that of what is said there.
  // "Grips equal, left weak" turns back what was said of both.
  const isTurnedBack = model !== undefined && marked(model, 'strength', 'equal');
  const isSided = before.some((piece) => isOfSide(tokens, piece)) || saysThatSide(tokens, before);
  if (model !== undefined && !isSided && !isTurnedBack) return false;
  const csm =
    model === undefined
      ? last.every(({ kind }) => kind === 'csm')
      : before.some(({ role }) => role === 'csm');
  // "Weak on the left, nothing on the right": no strength at all, and no denial of a weakness.
  if (model?.role === 'finding' && marked(model, 'finding', 'weakness') && marked(model, 'adj')) return false;
  // "Not the left" takes back a side; after "but" (and of a limb's check, after a pause) it denies what was said of the other.
  const bare = tail.state === 'not' && pieces[tail.to - 1]?.role === 'side';
  if (!csm) return namesSame(before, tail) && DENIALS.has(tail.state) && (!bare || tail.turned);
  return !bare || tail.turned || isPaused(tokens, { to: pieces[tail.from]?.from ?? 0 });
}

// "Blister on the left heel, none on the right heel": the place may be named again, and no other one.
const namesSame = (before: readonly Piece[], { site, state }: Tail): boolean => {
  if (site === null) return true;
  const named = tagIn(site, 'sites', 'site');
  const last = before.findLast(({ role }) => role === 'site');
  return state === 'none' && last !== undefined && tagIn(last, 'sites', 'site') === named;
};

// "Over the left kidney" has its side within the place.
const isOfSide = (tokens: readonly Token[], { role, from, to }: Piece): boolean =>
  role === 'side' ||
  (role === 'site' && tokens.slice(from, to).some(({ word }) => word === 'left' || word === 'right'));

// "Five seconds on that side, two on the other": the side in mind, without its name.
const saysThatSide = (tokens: readonly Token[], before: readonly Piece[]): boolean =>
  /\b(?:that|this) side\b/.test(saidIn(tokens, before[0]?.from, before.at(-1)?.to));

// Only a denial turns a finding; "left one is fine" says more than that.
const DENIALS: ReadonlySet<State | null> = new Set<State | null>(['none', 'absent', 'not']);
