// "Head: a bump on the back", "cut on the back of a hand": after a place with a back of its own, "on the back" is a part of that
// place and not the back of the body.

import { isSite, regionOf, type Site } from '../../../terms/index.ts';
import { isLikely, isSmall, type Piece, type Role, tagIn } from '../../pieces/piece.ts';
import { reread } from '../../pieces/reread.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import type { Talk } from '../talk.ts';

/** The pieces with each "back" that is a part of the place before it read as that part. */
export function withOwnBacks(talk: Talk, pieces: readonly Piece[]): readonly Piece[] {
  return pieces.map((piece, i) => (isOwnBack(talk, pieces, i) ? asPart(piece) : piece));
}

const asPart = (piece: Piece): Piece => reread(piece, 'part', 'sides.part-after', { part: 'posterior' });

function isOwnBack(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const { tokens } = talk;
  const piece = pieces[i];
  if (piece === undefined || piece.role !== 'site' || !isOnTheBack(tokens, piece)) return false;
  // "On the back of the hand", "on the back and the chest" say themselves which back they mean.
  const next = pieces[i + 1];
  const isWhole =
    next === undefined || isPaused(tokens, piece) || (next.role !== 'small' && next.role !== 'site');
  if (!isWhole) return false;
  const at = pieces.slice(0, i).findLastIndex(({ role }) => role === 'site');
  const said = pieces.slice(at + 1, i).filter(({ role }) => SAYING.has(role));
  const sites = at < 0 ? headedBy(talk, pieces) : sitesIn(pieces[at]);
  const isHead = sites.length > 0 && sites.every((site) => regionOf(site) === 'head');
  const isOther = sites.length > 0 && sites.every((site) => WITH_BACK.has(regionOf(site)));
  // "Head fine, graze on the back": the head has had its say, and so has a limb of which something else was said.
  if (said.some((one) => isLikely(one, 'present', 'false'))) return false;
  return isHead || (isOther && said.length <= 1);
}

const SAYING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care']);

const WITH_BACK: ReadonlySet<string> = new Set(['arm', 'leg', 'shoulder', 'neck']);

function isOnTheBack(tokens: readonly Token[], { to }: Piece): boolean {
  const words = tokens.slice(Math.max(0, to - 3), to);
  return (
    words.map(({ word }) => word).join(' ') === 'on the back' &&
    words.slice(0, -1).every(({ pause }) => pause === '')
  );
}

/** The sites of the heading that these pieces stand under: "head:", "right hand," as a clause of its own. */
function headedBy({ clauses, tokens }: Talk, pieces: readonly Piece[]): readonly Site[] {
  const from = pieces[0]?.from ?? 0;
  const before = clauses.find(({ pieces: own }) => own.at(-1)?.to === from);
  const isHeading =
    before !== undefined &&
    tokens[from - 1]?.pause !== 'end' &&
    before.pieces.every((one) => one.role === 'site' || one.role === 'side' || isSmall(one, 'article'));
  return isHeading ? before.pieces.flatMap(sitesIn) : [];
}

const sitesIn = (piece: Piece | undefined): readonly Site[] =>
  piece === undefined ? [] : (tagIn(piece, 'sites', 'site') ?? '').split('+').filter(isSite);
