// Joins side, part, site and level into one site phrase: "the front of the left thigh", "ribs five on the right".

import { isPaired, isSite, type Known, type Part, type Side, type Site } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { hasTag, type Island, numberOf, tagOf, tagsOf } from '../islands/island.ts';
import { marked, type Piece, readingOf } from '../pieces/piece.ts';
import type { Token } from '../token.ts';

/** One place in a clause: a site phrase, or a piece that plays another part. */
export type Item =
  | { readonly type: 'site'; readonly phrase: SitePhrase }
  | { readonly type: 'piece'; readonly piece: Piece };

export interface SitePhrase {
  /** token positions of the whole phrase */
  readonly from: number;
  readonly to: number;
  /** usually one; several where one word names them ("extremities", "all four quadrants") */
  readonly sites: readonly SiteRef[];
  /** a preposition leads to it ("on the left forearm") */
  readonly led: boolean;
  /** "other" or "opposite" stands before it: the side in mind, mirrored */
  readonly mirrored: boolean;
  /** the word for the site also means something else; it holds only beside an owner, a side or a finding */
  readonly doubtful: boolean;
}

const isFor = (piece: Piece | undefined, kind: string): boolean =>
  piece !== undefined && marked(piece, 'small') && marked(piece, 'small', kind);

/** The clause's pieces with site phrases joined. */
export function joinSites(pieces: readonly Piece[], tokens: readonly Token[]): readonly Item[] {
  const items: Item[] = [];
  let used = 0;
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i];
    if (piece === undefined || piece.role !== 'site') continue;
    const start = reachBack(pieces, tokens, i, used);
    const end = reachOn(pieces, tokens, i);
    for (let k = used; k < start; k++) push(items, pieces[k]);
    items.push({
      type: 'site',
      phrase: phraseOf(pieces.slice(start, end), piece, pieces[start - 1], tokens),
    });
    used = end;
    i = end - 1;
  }
  for (let k = used; k < pieces.length; k++) push(items, pieces[k]);
  return items;
}

function push(items: Item[], piece: Piece | undefined): void {
  if (piece !== undefined) items.push({ type: 'piece', piece });
}

const paused = (tokens: readonly Token[], piece: Piece): boolean =>
  (tokens[piece.to - 1]?.pause ?? '') !== '';

/** The index of the first piece that belongs to the site at `i`: sides, parts and articles straight before it. */
function reachBack(pieces: readonly Piece[], tokens: readonly Token[], i: number, stop: number): number {
  let start = i;
  for (let k = i - 1; k >= stop; k--) {
    const piece = pieces[k];
    if (piece === undefined || paused(tokens, piece)) break;
    const before = readingOf(piece, 'sides.side-before') ?? readingOf(piece, 'sides.part-before');
    if (before !== null && (piece.role === 'side' || piece.role === 'part')) start = k;
    else if (readingOf(piece, 'sides.mirror') !== null) start = k;
    else if (!isFor(piece, 'article')) break;
  }
  return start;
}

/** The index past the last piece that belongs to the site at `i`: sides, parts straight after it. */
function reachOn(pieces: readonly Piece[], tokens: readonly Token[], i: number): number {
  let end = i + 1;
  for (let k = i + 1; k < pieces.length; k++) {
    const before = pieces[k - 1];
    const piece = pieces[k];
    if (piece === undefined || before === undefined || paused(tokens, before)) break;
    const after = readingOf(piece, 'sides.side-after') ?? readingOf(piece, 'sides.part-after');
    if (after === null || (piece.role !== 'side' && piece.role !== 'part')) break;
    if (belongsToNext(pieces, tokens, k)) break;
    end = k + 1;
  }
  return end;
}

// "Elbow left wrist": the side belongs to the wrist, where both could be meant.
function belongsToNext(pieces: readonly Piece[], tokens: readonly Token[], k: number): boolean {
  const piece = pieces[k];
  if (piece === undefined || paused(tokens, piece)) return false;
  for (let n = k + 1; n < pieces.length; n++) {
    const next = pieces[n];
    if (next === undefined) return false;
    if (next.role === 'site') return !next.weak;
    if (next.role !== 'side' && next.role !== 'part' && !isFor(next, 'article')) return false;
    if (paused(tokens, next)) return false;
  }
  return false;
}

function phraseOf(
  pieces: readonly Piece[],
  sitePiece: Piece,
  before: Piece | undefined,
  tokens: readonly Token[],
): SitePhrase {
  const island = readingOf(sitePiece, 'sites') as Island;
  const first = pieces[0] ?? sitePiece;
  const last = pieces.at(-1) ?? sitePiece;
  const sides = pieces.flatMap((piece) =>
    piece.role === 'side' || readingOf(piece, 'sides.mirror') !== null ? [sideOf(piece)] : [],
  );
  const parts = pieces
    .flatMap((piece) => (piece.role === 'part' ? partsOf(piece) : []))
    .concat(tagsOf(island, 'part') as Part[]);
  const own = tagOf(island, 'side') as Side | null;
  const spoken = sides.find((side): side is Side => side !== null && side !== 'mirror') ?? own;
  const sites = (tagOf(island, 'site') ?? '').split('+').filter(isSite);
  const led =
    startsWithPreposition(pieces, tokens) ||
    (before !== undefined && isPreposition(before) && !paused(tokens, before));
  return {
    from: first.from,
    to: last.to,
    sites: sites.map((site) => refOf(site, spoken, island, parts)),
    led,
    mirrored: sides.includes('mirror'),
    doubtful:
      sitePiece.weak &&
      pieces.length === 1 &&
      !(before !== undefined && isFor(before, 'owner')) &&
      !(before !== undefined && isFor(before, 'mine')),
  };
}

const sideOf = (piece: Piece): Side | 'mirror' | null => {
  const reading =
    readingOf(piece, 'sides.side-before') ??
    readingOf(piece, 'sides.side-after') ??
    readingOf(piece, 'sides.mirror');
  return reading === null ? null : (tagOf(reading, 'side') as Side | 'mirror' | null);
};

export const partsOf = (piece: Piece): readonly Part[] => {
  const reading = readingOf(piece, 'sides.part-before') ?? readingOf(piece, 'sides.part-after');
  return reading === null ? [] : (tagsOf(reading, 'part') as Part[]);
};

function refOf(site: Site, spoken: Side | null, island: Island, parts: readonly Part[]): SiteRef {
  const plural = spoken === null && hasTag(island, 'plural') && isPaired(site);
  const side: Side | null = plural ? 'both' : spoken;
  const sideKnown: Known | null = side === null ? null : plural ? 'inferred' : 'spoken';
  return { site, side, sideKnown, parts: [...new Set(parts)], level: levelOf(island) };
}

/** `C5`, `T4`, `rib-7`; null where no number was said or it cannot be one. */
function levelOf(island: Island): string | null {
  const letter = tagOf(island, 'level');
  if (letter === null) return null;
  const figure = numberOf(island, 'level') ?? Number(tagOf(island, 'ordinal') ?? Number.NaN);
  const most = { C: 8, T: 12, L: 5, S: 5, rib: 12 }[letter] ?? 0;
  if (!Number.isInteger(figure) || figure < 1 || figure > most) return null;
  return letter === 'rib' ? `rib-${figure}` : `${letter}${figure}`;
}

export const isPreposition = (piece: Piece): boolean => isFor(piece, 'preposition');

const PREPOSITIONS = /^(to|on|over|of|in|at|along|down|round|around|only|just)$/;

function startsWithPreposition(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const first = pieces[0];
  return first !== undefined && first.role !== 'site' && PREPOSITIONS.test(tokens[first.from]?.word ?? '');
}
