// Where a sign was measured ("one forty over eighty in the left arm"): a place of the cuff or the probe is no look at it.

import type { Vital } from '../../../terms/index.ts';
import { isSmall, likelyTag, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';

// A pulse has a place too, but there the examiner's finger was: that is a look.
const MEASURED: ReadonlySet<Vital> = new Set<Vital>(['blood-pressure', 'oxygen-saturation', 'temperature']);

const PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

// A vertebra takes no cuff: "T thirty six" after a saturation is the next sign.
const isPlace = (piece: Piece): boolean =>
  PLACE.has(piece.role) && (piece.islands[0]?.slots.length ?? 0) === 0;
const leads = (piece: Piece, tokens: readonly Token[]): boolean =>
  isSmall(piece, 'preposition') ||
  isSmall(piece, 'article') ||
  /^(taken|measured)$/.test(tokens[piece.from]?.word ?? '');

const isMeasured = (piece: Piece | undefined): boolean =>
  piece !== undefined && MEASURED.has(likelyTag(piece, 'vital') as Vital);

/** How many pieces straight after the sign at `i` say where it was measured. */
export function placeAfter(tokens: readonly Token[], pieces: readonly Piece[], i: number): number {
  if (!isMeasured(pieces[i])) return 0;
  let k = endsInPlace(tokens, pieces, i) ? i + 1 : i;
  while (k + 1 < pieces.length && !isPaused(tokens, pieces[k] as Piece)) {
    const next = pieces[k + 1] as Piece;
    if (!isPlace(next) && !leads(next, tokens)) break;
    k++;
  }
  const last = pieces[k];
  const closes = k === pieces.length - 1 || isPaused(tokens, last as Piece) || isOtherSign(pieces[k + 1]);
  return k > i && last !== undefined && isPlace(last) && closes ? k - i : 0;
}

const POSTURE = /^(sitting|lying|standing|supine|seated)$/;

// "One thirty over eighty, left arm, sitting": the cuff's place may follow a pause where nothing else is said of it.
function endsInPlace(tokens: readonly Token[], pieces: readonly Piece[], i: number): boolean {
  const sign = pieces[i];
  if (sign === undefined || likelyTag(sign, 'vital') !== 'blood-pressure') return false;
  const rest = pieces.slice(i + 1);
  const end = rest.findIndex((piece) => POSTURE.test(tokens[piece.from]?.word ?? ''));
  const place = end < 0 ? rest : rest.slice(0, end);
  return (
    place.some(({ role }) => role === 'site') &&
    place.every((piece) => isPlace(piece) || leads(piece, tokens))
  );
}

const isOtherSign = (piece: Piece | undefined): boolean =>
  piece?.role === 'vital' || piece?.role === 'time' || (piece !== undefined && isSmall(piece, 'join'));

/** How many pieces straight before the sign at `i` say where it was measured: "left arm pressure one ten over seventy". */
export function placeBefore(tokens: readonly Token[], pieces: readonly Piece[], i: number): number {
  const sign = pieces[i];
  if (sign === undefined || likelyTag(sign, 'vital') !== 'blood-pressure') return 0;
  let k = i;
  while (k > 0 && isPlace(pieces[k - 1] as Piece) && !isPaused(tokens, pieces[k - 1] as Piece)) k--;
  return pieces.slice(k, i).some(({ role }) => role === 'site') ? i - k : 0;
}
