// Joins side, part, site and level into one site phrase: "the front of the left thigh", "ribs five on the right".

import {
  holdersOf,
  isPaired,
  isSite,
  type Known,
  type Part,
  regionOf,
  type Side,
  type Site,
} from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { hasTag, type Island, tagOf, tagsOf } from '../islands/island.ts';
import { isSmall, type Piece, readingOf } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import { sameLimb } from './limb.ts';

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
  /** "my" stands before it */
  readonly mine: boolean;
  /** "neither" stands before it */
  readonly denied: boolean;
  /** a word that only sounds like a side or a site was taken for one */
  readonly homophone: string | null;
}

const isFor = (piece: Piece | undefined, kind: string): boolean =>
  piece !== undefined && isSmall(piece, kind);

/** The clause's pieces with site phrases joined. */
export function joinSites(
  spoken: readonly Piece[],
  tokens: readonly Token[],
  mind: readonly SiteRef[] = [],
): readonly Item[] {
  const pieces = patientsOwn(spoken, tokens);
  const belly = mind.some(({ site }) => regionOf(site) === 'abdomen');
  const items: Item[] = [];
  let used = 0;
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i];
    const quadrant = belly && piece !== undefined && i >= used ? quadrantAt(pieces, tokens, i) : null;
    if (quadrant !== null) {
      for (let k = used; k < i; k++) push(items, pieces[k]);
      items.push({ type: 'site', phrase: quadrant });
      used = i + 2;
      i = used - 1;
      continue;
    }
    if (piece === undefined || piece.role !== 'site') continue;
    const start = reachBack(pieces, tokens, i, used);
    const end = reachOn(pieces, tokens, i);
    for (let k = used; k < start; k++) push(items, pieces[k]);
    items.push({
      type: 'site',
      phrase: phraseOf(pieces.slice(start, end), piece, leadOf(pieces, tokens, start), tokens),
    });
    used = end;
    i = end - 1;
  }
  for (let k = used; k < pieces.length; k++) push(items, pieces[k]);
  return lendSides(nested(items, tokens));
}

// With the abdomen in mind "right upper" and "left lower" are its quadrants, where no other site follows them.
function quadrantAt(pieces: readonly Piece[], tokens: readonly Token[], i: number): SitePhrase | null {
  const [side, part, next] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (side?.role !== 'side' || part?.role !== 'part' || next?.role === 'site' || paused(tokens, side))
    return null;
  const named = sideOf(side);
  const half = partsOf(part)[0];
  if ((named !== 'left' && named !== 'right') || (half !== 'upper' && half !== 'lower')) return null;
  const site = half === 'upper' ? 'upper-quadrant' : 'lower-quadrant';
  const ref: SiteRef = { site, side: named, sideKnown: 'spoken', parts: [], level: null };
  return {
    from: side.from,
    to: part.to,
    sites: [ref],
    led: startsWithPreposition([side], tokens),
    mirrored: false,
    doubtful: false,
    mine: false,
    denied: false,
    homophone: null,
  };
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
    if (piece === undefined || before === undefined) break;
    // "Under the ribs, left side": a side that can be nothing else may come after a comma.
    const late =
      paused(tokens, before) &&
      tokens[before.to - 1]?.pause === 'pause' &&
      piece.role === 'side' &&
      !piece.weak;
    if (paused(tokens, before) && !(late && k === i + 1)) break;
    const after = readingOf(piece, 'sides.side-after') ?? readingOf(piece, 'sides.part-after');
    if (after === null || (piece.role !== 'side' && piece.role !== 'part')) break;
    if (belongsToNext(pieces, tokens, k)) break;
    end = k + 1;
  }
  return end;
}

// What leads to a site phrase: the piece before its articles ("at the elbow").
function leadOf(pieces: readonly Piece[], tokens: readonly Token[], start: number): Piece | undefined {
  for (let k = start - 1; k >= 0; k--) {
    const piece = pieces[k];
    if (piece === undefined || paused(tokens, piece)) return piece;
    const plain = isFor(piece, 'article') && !isFor(piece, 'owner') && !isFor(piece, 'mine');
    if (!plain) return piece;
  }
  return undefined;
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
    (before !== undefined && isPreposition(before) && !paused(tokens, before)) ||
    ledByOwner(before, tokens);
  return {
    from: first.from,
    to: last.to,
    sites: sites.flatMap((site) => refsOf(site, spoken, island, parts)),
    led,
    mirrored: sides.includes('mirror'),
    doubtful:
      sitePiece.weak &&
      pieces.length === 1 &&
      !(before !== undefined && isFor(before, 'owner')) &&
      !(before !== undefined && isFor(before, 'mine')),
    mine: (before !== undefined && isFor(before, 'mine')) || pieces.some((piece) => isFor(piece, 'mine')),
    denied: pieces.some((piece) => piece.role === 'side' && readingOf(piece, 'negation') !== null),
    homophone: pieces.some(
      (piece) =>
        (piece.role === 'side' || piece === sitePiece) &&
        piece.islands[0] !== undefined &&
        hasTag(piece.islands[0], 'homophone'),
    )
      ? tokens
          .slice(first.from, last.to)
          .map(({ word }) => word)
          .join(' ')
      : null,
  };
}

// "To his chin": the owner stands between the preposition and the site.
const ledByOwner = (before: Piece | undefined, tokens: readonly Token[]): boolean =>
  before !== undefined &&
  (isFor(before, 'owner') || isFor(before, 'mine')) &&
  PREPOSITIONS.test(tokens[before.from - 1]?.word ?? '') &&
  (tokens[before.from - 1]?.pause ?? '') === '';

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

function refsOf(site: Site, spoken: Side | null, island: Island, parts: readonly Part[]): readonly SiteRef[] {
  const plural = spoken === null && hasTag(island, 'plural') && isPaired(site);
  const side: Side | null = plural ? 'both' : spoken;
  const sideKnown: Known | null = side === null ? null : plural ? 'inferred' : 'spoken';
  const ref = { site, side, sideKnown, parts: [...new Set(parts)] };
  const levels = levelsOf(island);
  return levels.length === 0 ? [{ ...ref, level: null }] : levels.map((level) => ({ ...ref, level }));
}

const MOST_LEVELS: Readonly<Record<string, number>> = { C: 8, T: 12, L: 5, S: 5, rib: 12 };

/** `C5`, `T4`, `rib-7`, one for each that was named ("C5 to C7" names three); none where one cannot be. */
function levelsOf(island: Island): readonly string[] {
  const letter = tagOf(island, 'level');
  if (letter === null) return [];
  const said = [...island.slots.map((slot) => slot.value), ...tagsOf(island, 'ordinal').map(Number)];
  const most = MOST_LEVELS[letter] ?? 0;
  if (said.some((figure) => !Number.isInteger(figure) || figure < 1 || figure > most)) return [];
  const [first, last] = [said[0] ?? 0, said.at(-1) ?? 0];
  const figures =
    hasTag(island, 'range') && last > first
      ? Array.from({ length: last - first + 1 }, (_, i) => first + i)
      : [...new Set(said)];
  return figures.map((figure) => (letter === 'rib' ? `rib-${figure}` : `${letter}${figure}`));
}

// "The little finger on the left hand", "the right leg just above the ankle": one place, named by the narrower site.
function nested(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const joints = out.slice(out.findLastIndex((one) => one.type === 'site') + 1);
    const before = out.at(-1 - joints.length);
    if (item.type === 'site' && before?.type === 'site' && joints.every(isJoint)) {
      const merged = mergeNested(before.phrase, item.phrase, joints.length > 0, tokens);
      if (merged !== null) {
        out.splice(out.length - 1 - joints.length, 1 + joints.length, { type: 'site', phrase: merged });
        continue;
      }
    }
    out.push(item);
  }
  return out;
}

// "The patient's right, my left": sides are always the patient's, so another's is left out.
function patientsOwn(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const says = (piece: Piece, owner: string): boolean =>
    piece.role === 'side' && tokens.slice(piece.from, piece.to).some(({ word }) => word === owner);
  return pieces.some((piece) => says(piece, 'patient'))
    ? pieces.filter((piece) => !says(piece, 'my'))
    : pieces;
}

// "Fingers are warm on the left hand": a site without a side takes that of a wider or narrower one in its clause.
function lendSides(items: readonly Item[]): readonly Item[] {
  return items.map((item, i) => {
    if (item.type !== 'site') return item;
    const [ref] = item.phrase.sites;
    if (
      ref === undefined ||
      item.phrase.sites.length > 1 ||
      ref.sideKnown === 'spoken' ||
      !isPaired(ref.site)
    )
      return item;
    const sites = items.filter((one) => one.type === 'site');
    const [later] = items.slice(i + 1).filter((one) => one.type === 'site');
    const earlier = sites[sites.indexOf(item) - 1];
    const giver =
      [later, earlier]
        .flatMap((one) => (one?.type === 'site' ? one.phrase.sites.slice(0, 1) : []))
        .find((one) => one.sideKnown === 'spoken' && isNear(ref, one)) ?? limbBefore(items, i, ref);
    if (giver?.side == null) return item;
    return {
      type: 'site',
      phrase: {
        ...item.phrase,
        sites: [{ ...ref, side: giver.side, sideKnown: isNear(ref, giver) ? 'spoken' : 'carried' }],
      },
    };
  });
}

// "Down the right leg, thigh fine, knee swollen": the limb's side holds for what follows of it.
function limbBefore(items: readonly Item[], i: number, ref: SiteRef): SiteRef | undefined {
  const earlier = items
    .slice(0, i)
    .flatMap((one) => (one.type === 'site' ? one.phrase.sites.slice(0, 1) : []));
  return earlier.findLast((one) => one.sideKnown === 'spoken' && sameLimb(one.site, ref.site));
}

const isNear = (a: SiteRef, b: SiteRef): boolean =>
  holdersOf(a.site).includes(b.site) || holdersOf(b.site).includes(a.site);

const isJoint = (item: Item): boolean =>
  item.type === 'piece' &&
  (isSmall(item.piece, 'preposition') || isSmall(item.piece, 'article')) &&
  !isSmall(item.piece, 'join');

function mergeNested(
  a: SitePhrase,
  b: SitePhrase,
  jointed: boolean,
  tokens: readonly Token[],
): SitePhrase | null {
  const [refA, refB] = [a.sites[0], b.sites[0]];
  if (refA === undefined || refB === undefined || a.sites.length > 1 || b.sites.length > 1) return null;
  const paused = (tokens[a.to - 1]?.pause ?? '') !== '';
  if (paused || (!b.led && !jointed)) return null;
  const aInB = holdersOf(refA.site).includes(refB.site);
  const bInA = holdersOf(refB.site).includes(refA.site);
  if (!aInB && !bInA) return null;
  const [inner, outer] = aInB ? [refA, refB] : [refB, refA];
  if (inner.side !== null && outer.side !== null && inner.side !== outer.side && inner.sideKnown === 'spoken')
    return null;
  const sided = outer.sideKnown === 'spoken' && isPaired(inner.site) && inner.sideKnown !== 'spoken';
  const ref = sided ? { ...inner, side: outer.side, sideKnown: outer.sideKnown } : inner;
  return { ...a, to: b.to, sites: [ref], doubtful: false, homophone: a.homophone ?? b.homophone };
}

export const isPreposition = (piece: Piece): boolean => isFor(piece, 'preposition');

const PREPOSITIONS =
  /^(to|on|over|of|in|at|along|down|round|around|only|just|from|across|under|behind|near)$/;

function startsWithPreposition(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const first = pieces[0];
  return first !== undefined && first.role !== 'site' && PREPOSITIONS.test(tokens[first.from]?.word ?? '');
}
