// Words of a limb's check that tell of something else where they stand: a spot that feels nothing, a joint that moves well, a
// finding that somebody can feel.

import { regionOf, type Site } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { hasTag, tagOf, tagsOf } from '../../islands/island.ts';
import { isLikely, isSmall, marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { stateOf } from '../contrast/state.ts';
import { isEndNamed } from '../csm/of-what.ts';

/** True for "can feel it grinding", "he can feel a lump there": what is felt is the finding after it, and no limb's check. */
export function isFelt(piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean {
  const island = readingOf(piece, 'csm');
  if (island === null || !hasTag(island, 'aspect', 'sensation') || tagOf(island, 'present') !== 'yes')
    return false;
  const feels = tokens.slice(piece.from, piece.to).some(({ word }) => word === 'feel');
  if (!feels || next === undefined || isPaused(tokens, piece)) return false;
  // "I can feel it clicking" is the examiner's too; "feels it normally" says how.
  const isWord = next.role === 'unknown' && !/ly$/.test(tokens[next.from]?.word ?? '');
  return isWord || (next.role === 'finding' && !isLikely(next, 'present', 'false'));
}

/**
 * How a joint moves, which checks no limb's end: "full movement" after a knee or an elbow, "movement is reduced" at a shoulder;
 * null where it is another check, or another place.
 */
export function jointMotion(
  piece: Piece,
  sites: readonly Site[],
  tokens: readonly Token[],
): 'good' | 'limited' | null {
  const island = readingOf(piece, 'csm');
  if (
    island === null ||
    tagsOf(island, 'aspect').join() !== 'motion' ||
    NOT_OF_JOINTS.some((tag) => hasTag(island, tag))
  )
    return null;
  const words = tokens.slice(piece.from, piece.to).map(({ word }) => word);
  if (!words.some((word) => /^(movements?|motion|mobility)$/.test(word))) return null;
  if (sites.length === 0 || !sites.every((one) => JOINTS.has(one))) return null;
  if (tagOf(island, 'present') === 'yes') return 'good';
  return hasTag(island, 'quality', 'decreased') ? 'limited' : null;
}

/** True for "moves fine" of a hand or a foot, or of its digits: so the limb's end was checked, and no joint. */
export function isEndMoving(piece: Piece, sites: readonly Site[], tokens: readonly Token[]): boolean {
  const moves = /^(can move|able to move|moves|moving)\b/.test(saidIn(tokens, piece.from, piece.to));
  const isWell = isLikely(piece, 'finding', 'limited-motion') && isLikely(piece, 'present', 'false');
  const isEnd = isEndNamed(sites.map((site) => ({ site })));
  return piece.role === 'finding' && moves && isWell && isEnd && tokens[piece.from - 1]?.word !== 'not';
}

const NOT_OF_JOINTS = ['end', 'ends', 'strength', 'limbs'] as const;

const JOINTS: ReadonlySet<Site> = new Set([
  'shoulder',
  'elbow',
  'wrist',
  'hip',
  'knee',
  'ankle',
  'neck',
  'jaw',
]);

/** A spot on the skin, and no limb's end: that it feels nothing tells nothing of the hand or the foot. */
const isSpot = (site: Site): boolean => SPOTS.has(site) || !LIMBS.has(regionOf(site));

const SPOTS: ReadonlySet<Site> = new Set(['upper-arm', 'forearm', 'thigh', 'lower-leg', 'hip', 'shoulder']);
const LIMBS: ReadonlySet<string> = new Set(['arm', 'leg', 'shoulder']);

/** What the check at `i` says of the skin that it leads to, and the piece that says so where it is another one. */
export interface SpotSense {
  readonly numb: boolean;
  readonly quality: string | null;
  readonly state: Piece | null;
}

/** "No sensation on the left thigh", "feeling over the calf is reduced"; null where the limb's end is meant. */
export function spotSense(
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
  sitesIn: (piece: Piece) => readonly Site[],
): SpotSense | null {
  const piece = pieces[i];
  const island = piece === undefined ? null : readingOf(piece, 'csm');
  if (piece === undefined || island === null || tagsOf(island, 'aspect').join() !== 'sensation') return null;
  const at = spotAfter(pieces, i, tokens, sitesIn);
  if (at === null) return null;
  const present = tagOf(island, 'present');
  const quality = tagOf(island, 'quality');
  if (present !== null) return { numb: present === 'no', quality, state: null };
  const state = stateAfter(pieces, at, tokens);
  const said = state === null ? null : stateOf(state);
  if (state === null || said === null) return null;
  const numb = said !== 'there' && said !== 'strong';
  return { numb, quality: said === 'less' || said === 'weak' ? 'decreased' : null, state };
}

function spotAfter(
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
  sitesIn: (piece: Piece) => readonly Site[],
): number | null {
  let led = ENDS_IN_PREPOSITION.test(tokens[(pieces[i]?.to ?? 0) - 1]?.word ?? '');
  for (let k = i + 1; k < pieces.length; k++) {
    const [before, piece] = [pieces[k - 1], pieces[k]];
    if (piece === undefined || before === undefined || isPaused(tokens, before)) return null;
    if (piece.role === 'site') {
      const sites = sitesIn(piece);
      return led && sites.length > 0 && sites.every(isSpot) ? k : null;
    }
    led = led || isSmall(piece, 'preposition') || OPENS_LED.test(tokens[piece.from]?.word ?? '');
    if (piece.role !== 'small' && piece.role !== 'side' && piece.role !== 'part') return null;
  }
  return null;
}

const ENDS_IN_PREPOSITION = /^(in|on|over|at|of|to|around|across)$/;
const OPENS_LED = /^(in|on|over|at|down|along|around|across)$/;

function stateAfter(pieces: readonly Piece[], at: number, tokens: readonly Token[]): Piece | null {
  for (let k = at + 1; k < pieces.length; k++) {
    const [before, piece] = [pieces[k - 1], pieces[k]];
    if (piece === undefined || before === undefined || isPaused(tokens, before)) return null;
    if (stateOf(piece) !== null) return piece;
    if (!isSmall(piece, 'link') && piece.role !== 'side') return null;
  }
  return null;
}

/** True after "can you feel this?": a "nothing" then says that nothing is felt, and calls no place sound. */
export const isAskedToFeel = (clauses: readonly Clause[], { from }: Piece): boolean =>
  clauses.some(({ pieces }) => pieces.some((one) => one.to <= from && marked(one, 'ask', 'sensation')));
