// The items of a clause: site phrases, and pieces that play another part; with the ways to look at them.

import type { SiteRef } from '../../context.ts';
import { isLikely, isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';

export interface SitePhrase extends Span {
  /** usually one; several where one word names them ("extremities", "all four quadrants") */
  readonly sites: readonly SiteRef[];
  /** a preposition leads to it ("on the left forearm") */
  readonly led: boolean;
  /** its side stands after it ("wrist on the right") */
  readonly sideLast: boolean;
  /** "other" or "opposite" stands before it: its side is the other one of that named last */
  readonly mirrored: boolean;
  /** the word for the site also means something else; it holds only beside an owner, a side or a finding */
  readonly doubtful: boolean;
  /** "my" stands before it */
  readonly mine: boolean;
  /** "my", "his" or "the patient's" stands before it: a place named anew */
  readonly owned: boolean;
  /** "neither" stands before it */
  readonly denied: boolean;
  /** a word that only sounds like a side or a site was taken for one */
  readonly homophone: string | null;
}

/** One place in a clause: a site phrase, or a piece that plays another part. */
export type Item =
  | { readonly type: 'site'; readonly phrase: SitePhrase }
  | { readonly type: 'piece'; readonly piece: Piece };

/** The piece of an item that is no site, or null. */
export const pieceOf = (item: Item | undefined): Piece | null => (item?.type === 'piece' ? item.piece : null);

/** The phrase of an item that is a site, or null. */
export const phraseOf = (item: Item | undefined): SitePhrase | null =>
  item?.type === 'site' ? item.phrase : null;

/** The site phrases among these items, in order. */
export const phrasesIn = (items: readonly (Item | undefined)[]): readonly SitePhrase[] =>
  items.flatMap((item) => phraseOf(item) ?? []);

/** The site phrases at these places. */
export const phrasesAt = (items: readonly Item[], places: readonly number[]): readonly SitePhrase[] =>
  phrasesIn(places.map((place) => items[place]));

/** The words of an item. */
export const wordsOf = (item: Item): Span => (item.type === 'site' ? item.phrase : item.piece);

/** True for a piece that plays this part. */
export const hasRole = (item: Item | undefined, role: Role): boolean =>
  item?.type === 'piece' && item.piece.role === role;

/** True for a finding that is said as an adjective ("swollen"). */
export const isAdjective = (item: Item | undefined): boolean =>
  item?.type === 'piece' && item.piece.role === 'finding' && isLikely(item.piece, 'adj');

/** True for a "but" and its like. */
export const isContrast = (item: Item | undefined): boolean =>
  item?.type === 'piece' && marked(item.piece, 'contrast');

/** True for a piece that may be a small word of this kind. */
export const isSmallItem = (item: Item | undefined, kind: string): boolean =>
  item?.type === 'piece' && isSmall(item.piece, kind);

/** True for "except", "apart from", "but not". */
export const isException = (item: Item | undefined): boolean =>
  item?.type === 'piece' && marked(item.piece, 'except');
