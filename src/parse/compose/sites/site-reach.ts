// How far a site phrase reaches around its site: the sides, parts and articles that belong to it, and what leads to it.

import { isSmall, type Piece, readingOf, tagIn } from '../../pieces/piece.ts';
import { isPaused, pauseAfter } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { isMirror, sideAfter } from './said-side.ts';

/** The index of the first piece that belongs to the site at `i`: sides, parts and articles straight before it. */
export function reachBack(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  i: number,
  stop: number,
): number {
  let start = i;
  for (let k = i - 1; k >= stop; k--) {
    const piece = pieces[k];
    if (piece === undefined || isPaused(tokens, piece)) break;
    const before = readingOf(piece, 'sides.side-before') ?? readingOf(piece, 'sides.part-before');
    // "Moving well both sides | right ribs tender": the place has its side already.
    if (
      piece.role === 'side' &&
      pieces.slice(start, i).some(({ role }) => role === 'side') &&
      isBoth(piece, tokens)
    )
      break;
    if (before !== null && (piece.role === 'side' || piece.role === 'part')) start = k;
    else if (isMirror(piece)) start = k;
    else if (!isSmall(piece, 'article')) break;
  }
  return start;
}

const isBoth = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  /^((on|in|to|from|of) )?(both|either) sides?$/.test(saidIn(tokens, from, to));

/** The index past the last piece that belongs to the site at `i`: sides, parts straight after it. */
export function reachOn(pieces: readonly Piece[], tokens: readonly Token[], i: number): number {
  let end = i + 1;
  for (let k = i + 1; k < pieces.length; k++) {
    const before = pieces[k - 1];
    const piece = pieces[k];
    if (piece === undefined || before === undefined) break;
    // "Under the ribs, left side": a side that can be nothing else may come after a comma.
    const pause = pauseAfter(tokens, before);
    // A bare "left" may where it closes what is said: "a graze on the shin, left".
    const closes = k === pieces.length - 1;
    const late = k === i + 1 && pause === 'pause' && piece.role === 'side' && (!piece.weak || closes);
    if (pause !== '' && !late) break;
    if (k === i + 1 && isOfSide(pieces, tokens, k)) {
      end = k + 2;
      break;
    }
    const after = readingOf(piece, 'sides.side-after') ?? readingOf(piece, 'sides.part-after');
    if (after === null || (piece.role !== 'side' && piece.role !== 'part')) break;
    if (belongsToNext(pieces, tokens, k)) break;
    if (isOtherOne(pieces, tokens, i, piece)) break;
    end = k + 1;
  }
  return end;
}

// "The fingers of the right": the hand that they are of is named by its side alone.
function isOfSide(pieces: readonly Piece[], tokens: readonly Token[], k: number): boolean {
  const [site, of, side, next] = [pieces[k - 1], pieces[k], pieces[k + 1], pieces[k + 2]];
  if (site === undefined || of === undefined || side?.role !== 'side') return false;
  const said = sideAfter(side);
  return (
    saidIn(tokens, of.from, of.to) === 'of' &&
    (said === 'left' || said === 'right') &&
    /^(fingers|thumb|big-toe|toes|little-toe|(index|middle|ring|little)-finger)$/.test(
      tagIn(site, 'sites', 'site') ?? '',
    ) &&
    !belongsToNext(pieces, tokens, k + 1) &&
    // "Of the left and right hand."
    (next === undefined || isPaused(tokens, side) || !isSmall(next, 'join')) &&
    !isOtherOne(pieces, tokens, k - 1, side)
  );
}

// "Left knee, right one is fine", "the left brow right one's fine": another one than was named.
function isOtherOne(pieces: readonly Piece[], tokens: readonly Token[], i: number, piece: Piece): boolean {
  const said = piece.role === 'side' ? sideAfter(piece) : null;
  if (said !== 'left' && said !== 'right') return false;
  const [before, site] = [pieces[i - 1], pieces[i]];
  const from = before?.role === 'side' ? before.from : (site?.from ?? 0);
  const other = said === 'left' ? 'right' : 'left';
  return tokens.slice(from, site?.to ?? from).some(({ word }) => word === other);
}

// "Elbow left wrist": the side belongs to the wrist, where both could be meant.
function belongsToNext(pieces: readonly Piece[], tokens: readonly Token[], k: number): boolean {
  const piece = pieces[k];
  if (piece === undefined || isPaused(tokens, piece)) return false;
  for (const next of pieces.slice(k + 1)) {
    if (next.role === 'site') return !next.weak;
    if (next.role !== 'side' && next.role !== 'part' && !isSmall(next, 'article')) return false;
    if (isPaused(tokens, next)) return false;
  }
  return false;
}

/** What leads to a site phrase that begins at `start`: the piece before its articles ("at the elbow"). */
export function leadOf(pieces: readonly Piece[], tokens: readonly Token[], start: number): Piece | undefined {
  return pieces.slice(0, start).findLast((piece) => {
    const plain = isSmall(piece, 'article') && !isSmall(piece, 'owner') && !isSmall(piece, 'mine');
    return isPaused(tokens, piece) || !plain;
  });
}
