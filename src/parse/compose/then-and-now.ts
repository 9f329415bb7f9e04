// "Pulse ninety now, it was one thirty ten minutes ago": of two readings in one sentence the first is of now, and the time is that of the
// second alone. "Pulse ninety, BP one ten over seventy at ten past" stays one set.

import { tagsOf } from '../islands/island.ts';
import { figureIn, likelyTag, type Piece } from '../pieces/piece.ts';
import { isPaused, type Span } from '../span.ts';
import { saidIn, type Token } from '../token.ts';

/** The stretch that a time is said of, without the readings before it that are of now. */
export function withoutNow(
  tokens: readonly Token[],
  pieces: readonly Piece[],
  times: readonly Piece[],
  time: Piece,
  scope: Span,
): Span {
  const own = pieces.filter((piece) => piece.from >= scope.from && piece.to <= scope.to);
  const said: Said = { tokens, pieces: own, times };
  const last = own.findLast((one) => one.to <= time.from);
  // "Pulse ninety, from one thirty ten minutes ago": so long ago it was what it was before.
  if (last !== undefined && endsInFormer(last)) return { from: last.to, to: scope.to };
  const from = own.map((_, k) => endOfNow(said, k)).findLast((end) => end !== null) ?? null;
  if (from === null || from > time.from) return scope;
  // "…, it was one thirty ten minutes ago, resps twenty": past its pause the time has had its reading.
  const closes =
    isPaused(tokens, time) && own.some((one) => isBetween(one, from, time) && isReading(said, one));
  return { from, to: closes ? time.to : scope.to };
}

const isBetween = (one: Piece, from: number, time: Piece): boolean => one.from >= from && one.to <= time.from;

const endsInFormer = ({ role, to, islands: [island] }: Piece): boolean => {
  if (role !== 'vital' || island === undefined || island.slots.at(-1)?.to !== to) return false;
  return tagsOf(island, 'num').at(-1) === 'former';
};

interface Said {
  readonly tokens: readonly Token[];
  readonly pieces: readonly Piece[];
  /** the pieces that are times; "one thirty" beside one of them is a figure */
  readonly times: readonly Piece[];
}

/** Where the readings up to the piece at `k` end, where they are of now and others are told behind them; else null. */
function endOfNow(said: Said, k: number): number | null {
  const { pieces, tokens } = said;
  const piece = pieces[k];
  if (piece === undefined || !isReading(said, piece)) return null;
  const behind = pieces.slice(k + 1);
  // "Pulse ninety now, was …", "pulse now ninety, was …"
  const now = behind[0] !== undefined && !isPaused(tokens, piece) && wordsOf(said, behind[0]) === 'now';
  const past = now ? behind.slice(1) : behind;
  if (now && isParted(said, behind[0], past[0]) && tellsMore(said, past)) return behind[0]?.to ?? null;
  if (/\bnow\b/.test(wordsOf(said, piece)) && piece.role === 'vital')
    return tellsMore(said, past) && !past.some((one) => /\bnow\b/.test(wordsOf(said, one))) ? piece.to : null;
  // "Pressure one ten over seventy, was eighty over fifty": the same sign twice is of two times.
  if (piece.role !== 'vital' || WAS.test(`${leadTo(said, k)} ${wordsOf(said, piece)}`)) return null;
  const again = behind.findIndex((one, i) => isOfSame(piece, one) || isItsFigure(said, k + 1 + i));
  return again < 0 ? null : startOf(said, k + 1, k + 1 + again);
}

const WAS = /\b(was|were|had been|from)\b/;
const WAS_ALONE = /^(and |but )?((it|they|that|he|she) )?(was|were)\b/;

const wordsOf = ({ tokens }: Said, { from, to }: Span): string => saidIn(tokens, from, to);

const isReading = ({ times }: Said, piece: Piece): boolean =>
  piece.role === 'vital' ||
  (piece.role === 'figure' && !piece.weak) ||
  (piece.role === 'time' && !times.includes(piece) && figureIn(piece) !== null);

// "Pulse ninety now resps twenty at ten past": without a pause the "now" may lead on as well.
function isParted({ tokens }: Said, now: Piece | undefined, next: Piece | undefined): boolean {
  if (now === undefined || next === undefined) return false;
  return (
    isPaused(tokens, now) || /^(and|but|was|were|it|they|down|up)\b/.test(saidIn(tokens, next.from, next.to))
  );
}

// "Resps eighteen now, were thirty five minutes ago": which of it the figure is nobody can tell, and it is none of the first.
const tellsMore = (said: Said, past: readonly Piece[]): boolean =>
  past.some((piece) => isReading(said, piece)) ||
  WAS_ALONE.test(saidIn(said.tokens, past[0]?.from, past.at(-1)?.to));

const isOfSame = (sign: Piece, piece: Piece): boolean =>
  piece.role === 'vital' && likelyTag(piece, 'vital') === likelyTag(sign, 'vital');

/** "It was one thirty": a figure without a name, told of before. */
const isItsFigure = (said: Said, k: number): boolean => {
  const piece = said.pieces[k];
  return piece !== undefined && piece.role !== 'vital' && isReading(said, piece) && WAS.test(leadTo(said, k));
};

/** The small words straight before the piece at `k`. */
function leadTo(said: Said, k: number): string {
  let first = k;
  while (isLead(said, said.pieces[first - 1])) first--;
  return wordsOf(said, { from: said.pieces[first]?.from ?? 0, to: said.pieces[k]?.from ?? 0 });
}

const isLead = ({ tokens }: Said, piece: Piece | undefined): boolean =>
  piece !== undefined && LEAD.test(saidIn(tokens, piece.from, piece.to)) && !isPaused(tokens, piece);

const LEAD = /^((and|but|it|they|that|he|she|was|were|had|been|down|up|from)( |$))+$/;

/** Where what is told of before begins; null where another place was measured at, or nothing tells the two apart. */
function startOf(said: Said, from: number, again: number): number | null {
  const between = said.pieces.slice(from, again);
  if (between.some(({ role }) => role === 'site' || role === 'side' || role === 'part')) return null;
  // "They were one thirty and eighty over fifty": what stands behind the word is of then too.
  const was = between.findIndex((one) => WAS.test(wordsOf(said, one)));
  let first = was < 0 ? again : from + was;
  while (first > from && isLead(said, said.pieces[first - 1])) first--;
  return said.pieces[first]?.from ?? null;
}
