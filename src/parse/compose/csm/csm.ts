// Composes circulation, sensation and motion at a limb's end from the phrases of a clause and the limb they mean.

import { type CsmStatement, GRADES, NO_MOVEMENT } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { hasTag, type Island, numberOf } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';
import { around } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { turnedSide } from '../findings/turned-side.ts';
import type { Reach } from '../negations/reach.ts';
import { isInOtherTalk } from '../other-talk.ts';
import { type Attachment, attach } from '../sites/attach.ts';
import { hasRole, type Item, isException, phraseOf, phrasesAt, pieceOf } from '../sites/item.ts';
import { looseSide } from '../sites/loose-side.ts';
import { sideIn } from '../sites/side-in.ts';
import { sitesOf } from '../sites/sides.ts';
import { BOUNDS, isWholeWithin, isWithin } from '../vitals/vital-read.ts';
import { aspectsOf, detailsOf } from './details.ts';
import { withEllipses } from './ellipsis.ts';
import type { ClauseCsm, FoundCsm } from './found-csm.ts';
import { lateSeconds } from './late-seconds.ts';
import { ALL_FOUR, endsOf, endsOfSites, toEnd } from './limb-ends.ts';
import { isPulseOfNoLimb } from './no-limb.ts';
import { AT_TRUNK, isElsewhere, isEndNamed, isOfThing, isSomebody, WARM_BY_ITSELF } from './of-what.ts';
import { presenceAt, sharePresence } from './presence.ts';
import { isPulseNamedAt } from './pulse-named.ts';
import { sideOfState, sideStraightAfter } from './side-after.ts';
import { othersThan, piecesAfter, without } from './spared.ts';

const isCsm = (item: Item): boolean => hasRole(item, 'csm');

const NONE: ClauseCsm = { found: [], usedSites: new Set() };

/** The circulation, sensation and motion findings of a clause; `mind` is the sites in mind. */
export function csmOf(
  items: readonly Item[],
  tokens: readonly Token[],
  mind: readonly SiteRef[],
  reach: Reach,
): ClauseCsm {
  if (!items.some(isCsm)) return NONE;
  const found: FoundCsm[] = [];
  for (const [i, group] of attach(items, tokens, isCsm)) {
    const piece = pieceOf(items[i]);
    const island = piece === null ? null : readingOf(piece, 'csm');
    const one =
      piece === null || island === null
        ? null
        : csmAt({ items, tokens, mind, reach }, i, piece, island, group);
    if (one !== null) found.push(one);
  }
  const shared = withEllipses(sharePresence(found, items), items, mind);
  // A bare noun of which nothing was said ("feeling your collarbones") takes no site.
  const usedSites = new Set(shared.flatMap((one) => (one.present === null ? [] : one.group)));
  return { found: shared, usedSites };
}

interface InHand {
  readonly items: readonly Item[];
  readonly tokens: readonly Token[];
  readonly mind: readonly SiteRef[];
  readonly reach: Reach;
}

function csmAt(
  { items, tokens, mind, reach }: InHand,
  i: number,
  piece: Piece,
  island: Island,
  attached: Attachment,
): FoundCsm | null {
  // A digit has no pulse of its own: "radial still there, thumb fine".
  const group = hasTag(island, 'pulse') ? attached.filter((at) => !isDigit(items[at])) : attached;
  if (group.length === 0 && isInOtherTalk(items, tokens, i)) return null;
  const phrases = phrasesAt(items, group);
  const named = sitesOf(phrases, mind);
  const isSided = named.some((ref) => ref.sideKnown === 'spoken');
  // "Left foot warm, the right one cold": a side straight before it turns the limb that was named.
  const side = isSided
    ? (sideStraightAfter(items, tokens, i, mind) ?? turnedSide(items, tokens, i, group.at(-1) ?? i, mind))
    : (looseSide(items, tokens, i, mind) ?? sideOfState(items, tokens, i, mind));
  const spoken = isSided && side !== null ? named.map((ref) => ({ ...ref, side: side.side })) : named;
  const limbs = items.findIndex((item) => hasRole(item, 'limbs'));
  const all = pieceOf(items[limbs]);
  const namesAll = hasTag(island, 'limbs');
  const isAll = namesAll || (all !== null && (phrases.length === 0 || isOfAll(items, i, limbs, group)));
  const except = items.findIndex(isException);
  const isExcepted = except > i && group.some((site) => site > except);
  // "Good in both feet except the left".
  const exceptedSide = except > i && !isExcepted ? sideIn(piecesAfter(items, except)) : null;
  // "Good pulses except in the right foot": how they are there nobody said.
  if (isExcepted && all === null) return null;
  // "Sensation normal apart from the little toe": how that one is nobody said, and the rest is not all of the limb's end.
  const isLast = !items.slice(i + 1, Math.max(i + 1, except)).some(isCsm);
  const isPartSpared = except > i && isLast && !isExcepted && exceptedSide === null && all === null;
  if (isPartSpared && items.slice(except).some(({ type }) => type === 'site')) return null;
  // "All fingers except the little finger move": one hand, and only some of it.
  if (except >= 0 && except < i && group.length > 0 && group.every((site) => site < except)) return null;
  const meant = isExcepted
    ? { ends: othersThan(endsOfSites(spoken, null)), endSpoken: true }
    : isAll
      ? { ends: ALL_FOUR, endSpoken: true }
      : endsOf(island, spoken, mind, side?.side ?? null);
  const { endSpoken } = meant;
  if (!endSpoken && phrases.length === 0 && side === null && isPulseOfNoLimb(tokens, piece)) return null;
  // "No pulse at the neck": said of a place that is no limb's, and not of the limb in mind.
  const ends = !endSpoken && isElsewhere(items, i) ? [] : meant.ends;
  // "When she moves it": moving shows a limb's end only where the end itself is named or in mind.
  const isWhole = phrases.length > 0 && spoken.every(({ site }) => site === 'arm' || site === 'leg');
  if (hasTag(island, 'ends') && !isAll && !isWhole && !isEndNamed(phrases.length > 0 ? spoken : mind))
    return null;
  // "There's movement when I press" on the hips is no movement of the feet: the joint at the trunk is in mind, and no limb.
  const near = phrases.length > 0 ? spoken : mind;
  if (hasTag(island, 'weak') && !isAll && near.some(({ site }) => AT_TRUNK.has(site)) && !isListed(items, i))
    return null;
  const late = lateSeconds(items, i, island);
  // "Sensation over the deltoid": felt there, and nothing is said of the hand.
  const isSkin = aspectsOf(island).every((aspect) => aspect === 'sensation');
  if (isSkin && spoken.length > 0 && spoken.every(({ site }) => AT_TRUNK.has(site))) return null;
  const seconds = numberOf(island, 'seconds') ?? late?.value ?? null;
  // No refill takes so long: the number was misheard, and the words stay as a note.
  if (seconds !== null && !isWithin(seconds, BOUNDS.refill)) return null;
  // Nor has the scale of strength any other grade: the words stay as a note.
  const grade = numberOf(island, 'strength');
  if (grade !== null && !isWholeWithin(grade, GRADES)) return null;
  if (hasTag(island, 'spoken-site') && !endSpoken && !movesAsSaid(island, tokens, mind)) return null;
  // "Toes move" tells of the toes; "move your toes" tells the patient what to do.
  const isOrder = hasTag(island, 'behind') && !piece.islands.some(isMoving);
  if (isOrder && group.every((site) => site > i) && !movesAsSaid(island, tokens, mind)) return null;
  // "My hands are freezing": a cold hand that is somebody's own is not the patient's.
  const owned = phrases.length === 0 ? ends.length === 0 : phrases.some((phrase) => phrase.mine);
  // "He is cold", "cold though" after the legs: it is the patient who is.
  const isBody =
    phrases.length === 0 &&
    (isSomebody(tokens, piece) || mind.every(({ site }) => site === 'leg' || site === 'arm'));
  if (hasTag(island, 'csm-warmth') && (owned || isBody || isOfThing(tokens, piece))) return null;
  // "The knee is swollen and it's warm": the joint is, and not the foot.
  const isOfJoint = near.length > 0 && near.every(({ site }) => WARM_BY_ITSELF.has(site));
  if (hasTag(island, 'csm-warmth') && hasTag(island, 'warmth', 'warm') && isOfJoint) return null;
  if (ends.length === 0 && (seconds === null || hasTag(island, 'limb-only'))) return null;
  // "Three seconds left, two right", with no limb in mind: hands or feet nobody knows, and the words stay as a note.
  if (ends.length === 0 && (side?.side === 'left' || side?.side === 'right')) return null;
  // "Toes all move except the big one on the left": of which foot that is said is the exception's own.
  if (exceptedSide !== null && side !== null && side.piece.from > (pieceOf(items[except])?.from ?? 0))
    return null;
  const kept = exceptedSide === null ? ends : ends.map((end) => without(end, exceptedSide.side));
  const said = presenceAt(items, i, island, reach, seconds, tokens);
  const isFound = said.present === null && isPulseNamedAt(items, tokens, i);
  const presence = isFound ? { ...said, present: true, inferred: true } : said;
  const spans = [
    piece,
    ...(isExcepted ? [] : phrases),
    ...(side === null ? [] : [side.piece]),
    ...(all === null ? [] : [all]),
    ...(presence.negation === null ? [] : [presence.negation]),
    ...(late === null ? [] : [late.piece]),
  ];
  return {
    piece,
    aspects: aspectsOf(island),
    ends: kept,
    present: grade !== null && grade <= NO_MOVEMENT ? false : presence.present,
    endSpoken,
    group: isExcepted ? [] : group,
    details: {
      ...ofWhatIsThere(warmthLess(detailsOf(island), presence.negation !== null), tokens, island),
      ...(presence.quality === undefined ? {} : { quality: presence.quality }),
      ...(presence.strength === undefined ? {} : { strength: presence.strength }),
      ...(seconds === null ? {} : { capRefillSeconds: seconds }),
    },
    known: {
      ...(presence.inferred ? { present: 'inferred' as const } : {}),
      // "Not moving his legs" is taken for the feet as well.
      ...(hasTag(island, 'ends') && isWhole && !isAll ? { site: 'inferred' as const } : {}),
    },
    doubt: side?.doubt ?? [],
    ...around(spans),
    spans,
    refillSeconds: ends.length === 0 ? seconds : null,
    negatedFrom: presence.negation?.from ?? null,
    leads: hasTag(island, 'leads') || (presence.negation?.from ?? piece.to) < piece.from,
  };
}

// "They're moving", "the left ones are moving" after the toes were named: it is said of them.
const movesAsSaid = (island: Island, tokens: readonly Token[], mind: readonly SiteRef[]): boolean =>
  hasTag(island, 'ends') &&
  isEndNamed(mind) &&
  /\b(they|ones?)( (is|are|all|both|still|do))*$/.test(
    saidIn(tokens, Math.max(0, island.from - 4), island.from),
  );

// "The toes aren't cold": how warm they are instead nobody said.
function warmthLess(details: Partial<CsmStatement>, denied: boolean): Partial<CsmStatement> {
  const { warmth: _, ...rest } = details;
  return denied ? rest : details;
}

// "No right pedal pulse, strong left radial pulse": past the pause the word is of the next one.
function ofWhatIsThere(
  details: Partial<CsmStatement>,
  tokens: readonly Token[],
  { from, to }: Island,
): Partial<CsmStatement> {
  const { quality: _, ...rest } = details;
  const last = tokens[to - 1];
  const isCut = tokens[to - 2]?.pause === 'pause' && to - from > 1 && last?.pause === '';
  return isCut && /^(left|right|other)$/.test(tokens[to]?.word ?? '') ? rest : details;
}

const isDigit = (item: Item | undefined): boolean => {
  const sites = phraseOf(item)?.sites ?? [];
  return sites.length > 0 && sites.every((ref) => toEnd(ref, null).every(({ digit }) => digit !== undefined));
};

// "Can wiggle" tells what somebody does, wherever the place stands.
const isMoving = (island: Island): boolean =>
  island.rule === 'csm.motion' && hasTag(island, 'ends') && hasTag(island, 'present', 'yes');

// "All four limbs have pulses and movement, no sensation in the feet": only what stands next to the feet is said of them.
function isOfAll(items: readonly Item[], i: number, limbs: number, group: Attachment): boolean {
  const site = group[0] ?? i;
  return limbs < i && site > i && items.slice(i + 1, site).some(isCsm);
}

// "Sensation and movement" are a check of the limb, whatever joint was named.
const isListed = (items: readonly Item[], i: number): boolean =>
  items.some((item, k) => k !== i && isCsm(item));
