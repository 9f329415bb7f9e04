// The items of a stretch of talk, less the sites whose word means something else there ("be right back").

import { DIGITS, isSite, type Site } from '../../../terms/index.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isSmall, marked, type Piece, type Role, readingOf, tagIn } from '../../pieces/piece.ts';
import { reread } from '../../pieces/reread.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { withStates } from '../contrast/late-state.ts';
import { endOf } from '../csm/limb-ends.ts';
import { type Item, isSmallItem, pieceOf, type SitePhrase } from '../sites/item.ts';
import { joinSites } from '../sites/join-sites.ts';
import { limbOf } from '../sites/limb.ts';
import { withMirrors } from '../sites/mirrors.ts';
import { place, type Talk } from '../talk.ts';
import { isAskedToFeel, isEndMoving, isFelt, jointMotion, type SpotSense, spotSense } from './off-limb.ts';
import { withOwnBacks } from './on-the-back.ts';

/** The items of these pieces, in the light of the sites in mind. */
export function itemsOf(talk: Talk, pieces: readonly Piece[]): readonly Item[] {
  const mind = talk.context.sites;
  const items = withMirrors(
    joinSites(withStates(recast(withOwnBacks(talk, pieces), talk), talk.tokens), talk.tokens, mind),
    mind,
  );
  return items.filter(
    (item, i) => item.type === 'piece' || !item.phrase.doubtful || holds(talk, items, i, item.phrase),
  );
}

// "Loss of feeling of the cheek" is no limb check, and "all limbs, no crepitus" names the limbs.
function recast(pieces: readonly Piece[], talk: Talk): readonly Piece[] {
  const limbCheck = pieces.some(({ role }) => role === 'csm');
  const places = pieces.flatMap((piece) => (piece.role === 'site' ? sitesIn(piece) : []));
  const noLimb = places.length > 0 && places.every((site) => endOf(site) === null);
  const named = places.length > 0 ? places : talk.context.sites.map(({ site }) => site);
  const isOnlyCheck = pieces.filter(({ role }) => role === 'csm').length === 1;
  const spots = pieces.map((piece, i) =>
    piece.role === 'csm' ? spotSense(pieces, i, talk.tokens, sitesIn) : null,
  );
  return pieces.map((piece, i): Piece => {
    // "He could not feel swelling" denies the swelling.
    if (piece.role === 'csm' && pieces[i + 1]?.role === 'finding' && readingOf(piece, 'negation') !== null)
      return as(piece, 'negation', 'negation');
    if (isFlushedSkin(pieces, i, talk))
      return asFinding(piece, { finding: 'discoloration', quality: 'red', adj: '' });
    if (isSmarting(pieces, i, talk.tokens))
      return asFinding(piece, { finding: 'pain', quality: 'stinging', adj: '' });
    if (isFeelingOfIt(pieces, i, talk.tokens)) return { ...piece, role: 'unknown' };
    if (piece.role === 'csm' && isFelt(piece, pieces[i + 1], talk.tokens)) return asWord(piece, talk);
    const spot = spots[i];
    if (spot) return numbness(piece, spot);
    if (spots.some((one) => one?.state === piece)) return asWord(piece, talk);
    const motion = isOnlyCheck ? jointMotion(piece, named, talk.tokens) : null;
    if (motion !== null) return motion === 'good' ? movingWell(piece) : limited(piece);
    if (marked(piece, 'nothing') && isAskedToFeel(talk.clauses, piece)) return { ...piece, role: 'unknown' };
    if (isNil(piece, pieces[i + 1], talk.tokens)) return nothing(piece);
    if (isEndMoving(piece, named, talk.tokens)) return reread(piece, 'csm', 'csm.motion', MOVES);
    if (piece.role === 'csm' && isStuckJoint(piece, places, talk)) return limited(piece);
    if (piece.role === 'csm' && noLimb) return as(piece, 'finding', 'findings.finding');
    if (warmsByItself(pieces, i, talk)) return { ...piece, role: 'unknown' };
    if (piece.role === 'limbs' && isPronoun(piece, talk) && !areAllInMind(talk)) return asWord(piece, talk);
    if (piece.role !== 'limbs' || limbCheck) return piece;
    if (!isOfBelly(piece, places, talk) && !isPronoun(piece, talk)) return limbsNamed(piece, talk);
    return asWord(piece, talk);
  });
}

const MOVES = { csm: '', aspect: 'motion', present: 'yes', ends: '' };

/** The piece as a word of no substance, which has found its place. */
function asWord(piece: Piece, talk: Talk): Piece {
  place(talk, piece);
  return { ...piece, role: 'small' };
}

// Sites that are a limb's end, or the whole of it: that they do not move is a limb check.
const WHOLE: ReadonlySet<Site> = new Set([
  'arm',
  'leg',
  'hand',
  'foot',
  'palm',
  'heel',
  'fingers',
  'toes',
  ...DIGITS,
]);

// "Left ankle, can't move it": a joint that does not move is found there, and checks no limb's end.
function isStuckJoint(piece: Piece, places: readonly Site[], { context }: Talk): boolean {
  const island = readingOf(piece, 'csm');
  if (island === null || !hasTag(island, 'ends') || tagOf(island, 'present') !== 'no') return false;
  const named = places.length > 0 ? places : context.sites.map(({ site }) => site);
  return named.length > 0 && named.every((site) => !WHOLE.has(site));
}

/** The piece as a finding with these tags. */
const asFinding = (piece: Piece, tags: Readonly<Record<string, string>>): Piece =>
  reread(piece, 'finding', 'findings.finding', tags);

const numbness = (piece: Piece, { numb, quality }: SpotSense): Piece =>
  asFinding(piece, {
    finding: 'numbness',
    ...(numb ? {} : { present: 'false' }),
    ...(quality === null ? {} : { quality }),
    adj: '',
  });

const movingWell = (piece: Piece): Piece =>
  asFinding(piece, { finding: 'limited-motion', present: 'false', adj: '' });

const limited = (piece: Piece): Piece => asFinding(piece, { finding: 'limited-motion', adj: '' });

// "Chest nil, belly nil": with nothing after it that it could deny, it says that nothing is there.
const isNil = (piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean =>
  piece.role === 'negation' &&
  piece.to - piece.from === 1 &&
  tokens[piece.from]?.word === 'nil' &&
  (next === undefined || isPaused(tokens, piece));

const nothing = (piece: Piece): Piece =>
  asFinding(piece, { finding: 'abnormality', present: 'false', adj: '', predicate: '', nothing: '' });

const BLUSHES: ReadonlySet<Site> = new Set(['face', 'cheek', 'forehead', 'neck', 'chest']);

// "Face flushed": it is red, and nobody washed it.
function isFlushedSkin(pieces: readonly Piece[], i: number, { tokens }: Talk): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece?.role !== 'care' || piece.to - piece.from > 1 || tokens[piece.from]?.word !== 'flushed')
    return false;
  const before = pieces.slice(0, i).findLast(({ role }) => role !== 'small');
  // "Flushed cheeks": what was washed has its article.
  if (next?.role === 'site' && !isPaused(tokens, piece) && sitesIn(next).every((site) => BLUSHES.has(site)))
    return before?.role !== 'site';
  const isNamed = before?.role === 'site' && sitesIn(before).every((site) => BLUSHES.has(site));
  if (!isNamed) return false;
  // "Face is flushed and sweaty"; "face flushed and dressed" was washed.
  const goesOn = next !== undefined && isSmall(next, 'join') && isSmall(pieces[i - 1] ?? piece, 'link');
  return next === undefined || isPaused(tokens, piece) || next.role !== 'small' || goesOn;
}

// "Both ears sting": no insect did it.
function isSmarting(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (piece?.role !== 'finding' || before?.role !== 'site' || isPaused(tokens, before)) return false;
  const isWord = piece.to - piece.from === 1 && tokens[piece.from]?.word === 'sting';
  return isWord && marked(before, 'plural');
}

// "A leathery burn and he can't feel it": of the burn, and of no limb's end.
function isFeelingOfIt(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece?.role !== 'csm' || !marked(piece, 'aspect', 'sensation') || tokens[piece.to - 1]?.word !== 'it')
    return false;
  return pieces.slice(0, i).some((one) => WOUNDS.some((finding) => marked(one, 'finding', finding)));
}

const WOUNDS = ['burn', 'laceration', 'abrasion', 'bite', 'puncture', 'discoloration', 'rash'];

const BELLY: ReadonlySet<Site> = new Set(['abdomen', 'upper-quadrant', 'lower-quadrant']);

// "Belly soft and non-tender in all four": its quadrants, of which the abdomen is all.
function isOfBelly(piece: Piece, places: readonly Site[], { tokens, context }: Talk): boolean {
  const named = places.length > 0 ? places : context.sites.map(({ site }) => site);
  const isBare = tokens[piece.to - 1]?.word === 'four' || tokens[piece.to - 1]?.word === '4';
  return isBare && named.length > 0 && named.every((site) => BELLY.has(site));
}

// "Can he move his fingers?" "All of them.": four limbs are meant only where arms and legs are in mind.
function areAllInMind({ context }: Talk): boolean {
  const limbs = new Set(context.sites.map(({ site }) => limbOf(site)));
  limbs.delete(null);
  return limbs.size !== 1;
}

// "The foot is warming up": it does so itself, and nobody warms it.
function warmsByItself(pieces: readonly Piece[], i: number, { tokens }: Talk): boolean {
  const [piece, before] = [pieces[i], pieces[i - 1]];
  if (piece?.role !== 'care' || before === undefined || isPaused(tokens, before)) return false;
  const said = tokens.slice(piece.from, piece.to).map(({ word }) => word);
  const isBare = said[0] === 'warming' && said.slice(1).every((word) => word === 'up' || word === 'now');
  const isTold = /^(is|are)$/.test(tokens[piece.from - 1]?.word ?? '');
  return isBare && (before.role === 'site' || isTold);
}

// "Yes, all of them" names nothing by itself.
const isPronoun = (piece: Piece, { tokens }: Talk): boolean => tokens[piece.to - 1]?.word === 'them';

// "Of all four extremities" names the limbs themselves where no check of their ends is made, "hands and feet" their ends.
const limbsNamed = (piece: Piece, { tokens }: Talk): Piece =>
  reread(piece, 'site', 'sites.site', {
    site: tokens[piece.to - 1]?.word === 'feet' ? 'hand+foot' : 'arm+leg',
    plural: '',
  });

const sitesIn = (piece: Piece): readonly Site[] =>
  (tagIn(piece, 'sites', 'site') ?? '').split('+').filter(isSite);

/** The piece with another of its readings first, where it has it. */
function as(piece: Piece, role: Role, rule: string): Piece {
  const reading = readingOf(piece, rule);
  return reading === null
    ? piece
    : { ...piece, role, islands: [reading, ...piece.islands.filter((one) => one !== reading)] };
}

const BESIDE: ReadonlySet<Role> = new Set(['finding', 'negation', 'intention', 'csm']);

// A doubtful word for a site holds where a finding or a link stands beside it, or where it is all that was said.
function holds({ tokens }: Talk, items: readonly Item[], i: number, phrase: SitePhrase): boolean {
  if (phrase.to - phrase.from === tokens.length) return true;
  const pausedBefore = phrase.from === 0 || isPaused(tokens, { to: phrase.from });
  const pausedAfter = isPaused(tokens, phrase);
  if (pausedBefore && pausedAfter) return true;
  const [before, after] = [items[i - 1], pausedAfter ? undefined : items[i + 1]];
  return isBeside(before) || isBeside(after) || isSmallItem(after, 'link');
}

const isBeside = (item: Item | undefined): boolean => {
  const piece = pieceOf(item);
  // "Back no pain": the "no" that could answer denies what follows.
  const denies = piece?.role === 'answer' && marked(piece, 'negation', 'before');
  const beside = piece !== null && (BESIDE.has(piece.role) || denies);
  return item?.type === 'site' || isSmallItem(item, 'join') || beside;
};
