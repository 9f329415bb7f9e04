// Whether a check of a limb found what it looked for, and how that is known.

import { type CsmStatement, REFILL_LIMIT_SECONDS } from '../../../terms/index.ts';
import { hasTag, type Island, tagOf } from '../../islands/island.ts';
import { marked, readingOf } from '../../pieces/piece.ts';
import { isPaused, type Span } from '../../span.ts';
import type { Token } from '../../token.ts';
import { inState, stateOf } from '../contrast/index.ts';
import type { Reach } from '../negations/reach.ts';
import { hasRole, type Item, isSmallItem, phraseOf, pieceOf, wordsOf } from '../sites/item.ts';
import { aspectsOf, detailsOf } from './details.ts';
import type { FoundCsm } from './found-csm.ts';

interface Presence extends Partial<Pick<CsmStatement, 'quality' | 'strength'>> {
  readonly present: boolean | null;
  /** worked out from a measure and not said as present or absent */
  readonly inferred: boolean;
  /** the words that deny it, or that call it normal */
  readonly negation: Span | null;
}

const said = (present: boolean, negation: Span | null): Presence => ({ present, inferred: false, negation });

/** The presence of the check at item `i`; `seconds` is its refill time, where it is one. */
export function presenceAt(
  items: readonly Item[],
  i: number,
  island: Island,
  reach: Reach,
  seconds: number | null,
  tokens: readonly Token[],
): Presence {
  if (seconds !== null) return { present: seconds <= REFILL_LIMIT_SECONDS, inferred: true, negation: null };
  const warmth = tagOf(island, 'warmth');
  // "No reading, fingers too cold": a bare "no" denies things, and no adjective; "no cold fingers" does.
  const isBeyond = warmth !== null && !/^no$/.test(tokens[island.from - 1]?.word ?? '');
  const negation = negationAt(items, island.from, reach, isBeyond) ?? lostBefore(items, i);
  const negated = negation !== null;
  if (warmth !== null) return { present: (warmth === 'warm') !== negated, inferred: true, negation };
  if (hasTag(island, 'csm-warmth')) return said(!negated, negation);
  // "No bruising, pulse in the right wrist is good": what is told of it behind it stands out of the denial of something else.
  const isOthers = negation !== null && !reachesTo(items, i, negation);
  const state = negated && !isOthers ? null : stateAt(items, i, island);
  if (state !== null) return { ...state, inferred: false };
  const good = isOthers && hasTag(island, 'noun') ? normalAfter(items, i, tokens) : null;
  if (good !== null) return said(true, good);
  const word = tagOf(island, 'present');
  // "No, he can't feel that" without its comma: the "no" answers, and nobody denies what is denied.
  if (word === 'no' && deniesItself(tokens, island)) return said(false, null);
  if (word !== null) {
    const own = negation !== null && !reachesTo(items, i, negation) ? null : negation;
    if (word === 'no' && own !== null && !turnsBack(tokens, own, island)) return said(false, own);
    if (own === null && word === 'yes' && joinsDenied(items, i)) return said(false, null);
    return said((word === 'yes') !== (own !== null), own);
  }
  if (hasTag(island, 'noun')) {
    if (negated) return said(false, negation);
    if (isHad(items, i)) return said(true, null);
    const normal = normalAfter(items, i, tokens);
    if (normal !== null) return said(true, normal);
  }
  if (hasTag(island, 'turned')) return { present: true, inferred: true, negation: null };
  return { present: null, inferred: false, negation: null };
}

// "No radial pulse, none there", "can't find it, no pulse": two denials beside each other are one; only straight before it a "not" turns
// what is denied.
const turnsBack = (tokens: readonly Token[], no: Span, island: Span): boolean =>
  no.to <= island.from &&
  island.from - no.to <= 1 &&
  tokens.slice(no.to - 1, island.from).every(({ pause }) => pause === '');

const deniesItself = (tokens: readonly Token[], { from, to }: Span): boolean =>
  tokens.slice(from, to).some(({ word }) => word === 'not');

// "Pulse in the left foot is weak", "a good pulse": how the check of a single aspect was.
function stateAt(items: readonly Item[], i: number, island: Island): Omit<Presence, 'inferred'> | null {
  const aspects = aspectsOf(island);
  const [aspect] = aspects;
  if (aspect === undefined || tagOf(island, 'present') === 'no') return null;
  const next = items.findIndex((item, k) => k > i && hasRole(item, 'csm'));
  const ofNext = next < 0 ? undefined : stateBeforeSide(items, next);
  const after = items
    .slice(i + 1, next < 0 ? items.length : next)
    .find((item) => item !== ofNext && hasRole(item, 'state'));
  const before = beforeSide(items, i, island) ?? (hasRole(items[i - 1], 'state') ? items[i - 1] : undefined);
  const piece = pieceOf(before ?? after);
  const state = piece === null ? null : stateOf(piece);
  // "CSM left foot intact": of all three together only that they are there, or are not.
  if (aspects.length > 1)
    return state === 'there' || state === 'absent' ? { present: state === 'there', negation: piece } : null;
  const found = state === null ? null : inState({ aspect, ...detailsOf(island) }, state);
  return found === null ? null : { ...found, negation: piece };
}

// "Good left radial pulse", "absent right pedal pulse": how it is stands before its side.
const beforeSide = (items: readonly Item[], i: number, island: Island): Item | undefined =>
  hasTag(island, 'pulse') ? stateBeforeSide(items, i) : undefined;

function stateBeforeSide(items: readonly Item[], i: number): Item | undefined {
  if (!hasRole(items[i - 1], 'side')) return undefined;
  // "No good left radial pulse."
  const lead = pieceOf(items[i - 3]);
  if (lead !== null && marked(lead, 'negation', 'before')) return undefined;
  const item = items[i - 2];
  const piece = pieceOf(item);
  return piece !== null && stateOf(piece) !== null ? item : undefined;
}

function negationAt(items: readonly Item[], at: number, reach: Reach, adjective: boolean): Span | null {
  const span = reach.span(at, adjective);
  if (span === null) return null;
  // "Intact in both hands, absent in both feet": the denial is said of the limb that follows it.
  return reach.kind(at, adjective) === 'after' && leadsToSite(items, span.from) ? null : span;
}

// "No numbness, CSM intact": what says itself how it is stands out of a denial of something else. "No pulse or sensation
// present" is one list all the same.
function reachesTo(items: readonly Item[], i: number, { from, to }: Span): boolean {
  const here = pieceOf(items[i]);
  if (here === null || from >= here.from) return true;
  if (isSmallItem(items[i - 1], 'or')) return true;
  return items.slice(0, i).every((item) => {
    const piece = pieceOf(item);
    return piece === null || piece.from < to || (piece.role !== 'finding' && piece.role !== 'csm');
  });
}

// "No pulse or sensation present": the "no" stands in the first check's own words.
function joinsDenied(items: readonly Item[], i: number): boolean {
  const before = pieceOf(items[i - 2]);
  const island = before === null ? null : readingOf(before, 'csm');
  return isSmallItem(items[i - 1], 'or') && island !== null && tagOf(island, 'present') === 'no';
}

// "I have lost the left radial".
function lostBefore(items: readonly Item[], i: number): Span | null {
  const before = items
    .slice(0, i)
    .findLast((item) => !hasRole(item, 'side') && !isSmallItem(item, 'article'));
  const piece = pieceOf(before);
  return piece !== null && marked(piece, 'lost') ? piece : null;
}

/** "Pulse absent left foot" has named no limb before; in "left foot pulse absent, right foot pulse present" the next has its own. */
function leadsToSite(items: readonly Item[], from: number): boolean {
  const at = items.findIndex((item) => pieceOf(item)?.from === from);
  const [next, after] = items.slice(at + 1).filter((item) => !hasRole(item, 'small'));
  if (at < 0 || hasRole(after, 'csm')) return false;
  const before = items.slice(0, at);
  // "Foot pulse absent on the left": the side is that of the foot that was named.
  if (hasRole(next, 'side') && after?.type !== 'site') return before.some(isSided);
  const isNamed = before.some((item) => item.type === 'site' || hasRole(item, 'limbs'));
  return isNamed && (next?.type === 'site' || hasRole(next, 'side'));
}

const isSided = (item: Item): boolean =>
  hasRole(item, 'side') || (phraseOf(item)?.sites ?? []).some(({ side }) => side !== null);

// "All four limbs have pulses and movement".
function isHad(items: readonly Item[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const piece = pieceOf(items[k]);
    if (piece?.role === 'csm') continue;
    // "There is a pulse" opens as an answer would.
    if ((piece?.role === 'negation' || piece?.role === 'answer') && marked(piece, 'exists')) return true;
    if (piece?.role !== 'small') return false;
    if (isSmallItem(items[k], 'having') || marked(piece, 'exists')) return true;
    if (!isSmallItem(items[k], 'join') && !isSmallItem(items[k], 'article')) return false;
  }
  return false;
}

// "Sensation in the left hand is normal": the first finding after the noun calls it so.
function normalAfter(items: readonly Item[], i: number, tokens: readonly Token[]): Span | null {
  const at = items.findIndex((item, k) => k > i && hasRole(item, 'finding'));
  const piece = pieceOf(items[at]);
  // "Pulse in the left foot, shoulders okay": past a pause another place is called so.
  const pause = items.findIndex((item, k) => k >= i && k < at && isPaused(tokens, wordsOf(item)));
  if (pause >= 0 && items.slice(pause + 1, at).some(({ type }) => type === 'site')) return null;
  const finding = piece === null ? null : readingOf(piece, 'findings.finding');
  const normal =
    finding !== null && tagOf(finding, 'present') === 'false' && tagOf(finding, 'finding') === 'abnormality';
  return normal ? { from: finding.from, to: finding.to } : null;
}

// "Sensation and movement": a word or two may join the members of a list, and no more.
const JOINED = 2;

/** A list shares what is said of its last member ("sensation and movement intact") or before its first ("good pulse, sensation"). */
export const sharePresence = (found: readonly FoundCsm[], items: readonly Item[]): readonly FoundCsm[] =>
  fromFirst(fromLast(found), items);

// "Sensation but no pulse": what stands before its own noun is said of that one and of none before it.
function fromLast(found: readonly FoundCsm[]): readonly FoundCsm[] {
  const out: FoundCsm[] = [];
  for (const one of found.toReversed()) {
    const next = out[0];
    const shares =
      one.present === null &&
      next !== undefined &&
      next.present !== null &&
      !next.leads &&
      next.piece.from - one.piece.to <= JOINED &&
      !(next.negatedFrom !== null && next.negatedFrom >= one.piece.to);
    out.unshift(shares ? { ...one, present: next.present, to: Math.max(one.to, next.to) } : one);
  }
  return out;
}

function fromFirst(found: readonly FoundCsm[], items: readonly Item[]): readonly FoundCsm[] {
  const out: FoundCsm[] = [];
  for (const one of found) {
    const before = out.at(-1);
    const shares =
      one.present === null &&
      before !== undefined &&
      before.present !== null &&
      before.leads &&
      isListed(items, before.piece.to, one.piece.from);
    out.push(shares ? { ...one, present: before.present, leads: true, from: before.from } : one);
  }
  return out;
}

// Only words that join stand between the two.
const isListed = (items: readonly Item[], from: number, to: number): boolean =>
  items.every((item) => {
    const { from: start } = wordsOf(item);
    if (start < from || start >= to) return true;
    return isSmallItem(item, 'join') || isSmallItem(item, 'or') || isSmallItem(item, 'article');
  });
