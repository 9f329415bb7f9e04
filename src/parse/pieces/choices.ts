// "Which knee hurts, the left or the right?", "is it the left wrist or the right one?": two sides that are to be chosen from are one
// word for both.

import type { Token } from '../token.ts';
import { isSmall, marked, type Piece, tagIn } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such choice as one side, marked `either` and `choice`. */
export function withChoices(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const out: Piece[] = [];
  for (let i = 0; i < pieces.length; ) {
    const choice = choiceAt(pieces, i, tokens);
    out.push(...(choice ?? [pieces[i] as Piece]));
    i += choice === null ? 1 : widthOf(pieces, i, choice);
  }
  return out;
}

const widthOf = (pieces: readonly Piece[], i: number, choice: readonly Piece[]): number => {
  const end = choice.at(-1)?.to ?? 0;
  return pieces.slice(i).filter(({ to }) => to <= end).length;
};

const sideOf = (piece: Piece | undefined): 'left' | 'right' | null => {
  const side =
    piece?.role === 'side'
      ? (tagIn(piece, 'sides.side-before', 'side') ?? tagIn(piece, 'sides.side-after', 'side'))
      : null;
  return side === 'left' || side === 'right' ? side : null;
};

const siteOf = (piece: Piece | undefined): string | null =>
  piece?.role === 'site' ? tagIn(piece, 'sites', 'site') : null;

/** The pieces that stand for a choice which begins at `i`; null where none does. */
function choiceAt(pieces: readonly Piece[], i: number, tokens: readonly Token[]): readonly Piece[] | null {
  const [first, second] = pieces.slice(i, i + 2);
  const side = sideOf(first);
  if (first === undefined || side === null) return null;
  const site = siteOf(second) === null ? undefined : second;
  const or = pieces[i + (site === undefined ? 1 : 2)];
  const other = pieces[i + (site === undefined ? 2 : 3)];
  const again = pieces[i + (site === undefined ? 3 : 4)];
  if (or === undefined || other === undefined || !isSmall(or, 'or')) return null;
  if (sideOf(other) === null || sideOf(other) === side || /^(end|ask)$/.test(tokens[or.to - 1]?.pause ?? ''))
    return null;
  // "The left arm or the right leg" are two places.
  if (site !== undefined && siteOf(again) !== null && siteOf(again) !== siteOf(site)) return null;
  const both = choiceOf(first);
  if (site === undefined) return [{ ...both, to: other.to }];
  return [both, site, ...[or, other, ...(siteOf(again) === null ? [] : [again as Piece])].map(asWord)];
}

const TAGS = { side: 'both', either: '', choice: '' };

const choiceOf = (piece: Piece): Piece => ({
  ...piece,
  islands: ['sides.side-before', 'sides.side-after'].flatMap(
    (rule) => reread(piece, 'side', rule, TAGS).islands,
  ),
  weak: false,
});

const asWord = (piece: Piece): Piece => ({
  ...reread(piece, 'small', 'small.small', { small: 'word' }),
  weak: false,
});

/** True for a side that stands for a choice. */
export const isChoice = (piece: Piece): boolean => marked(piece, 'choice');
