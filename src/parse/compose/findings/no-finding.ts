// Words of a finding that find nothing here, whatever their place: said of a thing, of all the rest, taken back, or of the examiner.

import type { SiteRef } from '../../context.ts';
import { hasTag, type Island } from '../../islands/island.ts';
import { isSmall, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { endOf } from '../csm/limb-ends.ts';
import { isInOtherTalk } from '../other-talk.ts';
import type { Attachment } from '../sites/attach.ts';
import { hasRole, type Item, phrasesAt, pieceOf } from '../sites/item.ts';
import { isPredicate } from './predicate.ts';
import {
  isAllOver,
  isAskedAbout,
  isElsewhere,
  isOfARegion,
  isOfAThing,
  isOfTheRest,
  isOnAThing,
} from './subject.ts';
import { isTakenBack } from './taken-back.ts';

/** True where the finding at `i`, in `piece`, is none; `group` are the items of the sites that it is attached to. */
export function isNoFinding(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  piece: Piece,
  island: Island,
  group: Attachment,
  mind: readonly SiteRef[],
): boolean {
  if (hasTag(island, 'predicate') && !isPredicate(items, tokens, i, group.at(-1) ?? null, island, mind))
    return true;
  // "Partial thickness laceration" is no burn; the words of depth stand for one only where nothing else is named.
  if (hasTag(island, 'ellipsis') && !isPaused(tokens, piece) && hasRole(items[i + 1], 'finding')) return true;
  if (isWithEase(tokens, piece)) return true;
  if (group.length === 0 && isInOtherTalk(items, tokens, i)) return true;
  // "No other injuries" is said of all the rest, "no distracting injury" of the whole, "waters broken" of a birth, and none of a site in mind.
  if (group.length === 0 && /^(other|distracting|waters)$/.test(tokens[piece.from - 1]?.word ?? ''))
    return true;
  if (group.length === 0 && isOfTheTrunk(island, mind)) return true;
  // "Giving fluids", "fluids, second bag" are given; what leaks of a place is named with it.
  if (group.length === 0 && saidIn(tokens, piece.from, piece.to) === 'fluids') return true;
  if (group.length === 0 && (isAllOver(tokens, piece) || isOnAThing(items, tokens, i))) return true;
  if (isElsewhere(tokens, piece)) return true;
  if (
    isOfTheRest(items, tokens, i) ||
    isOfAThing(items, tokens, i) ||
    isOfARegion(items, tokens, i) ||
    isAskedAbout(items, tokens, i)
  )
    return true;
  if (isTakenBack(tokens, piece)) return true;
  // "Opens her eyes when I pinch her, groans, pulls away": what she pulls away from is not the eyes.
  const near = group.at(-1) ?? -1;
  if (hasTag(island, 'patient') && near >= 0 && near < i && hasUnknown(items, near, i)) return true;
  // "Pulls away when I pinch the hand" answers to pain, and nothing was sore before.
  if (
    hasTag(island, 'patient') &&
    tokens.slice(piece.to, piece.to + 5).some(({ word }) => /^pinch/.test(word))
  )
    return true;
  // "A nail in the left palm", and nothing where no place follows ("the needle is in").
  if (hasTag(island, 'before-site') && (group[0] ?? -1) < i) return true;
  if (hasTag(island, 'soft') && isOfNoun(items, tokens, i)) return true;
  // "Push against my hands, good": the examiner's own.
  const phrases = phrasesAt(items, group);
  return hasTag(island, 'soft') && phrases.length > 0 && phrases.every(({ mine }) => mine);
}

// "Left wrist hurts, no midline tenderness": a limb has no midline, and which place is meant nobody said.
const isOfTheTrunk = (island: Island, mind: readonly SiteRef[]): boolean =>
  hasTag(island, 'side', 'midline') && mind.every(({ site }) => endOf(site) !== null);

// "A clean dressing on", "with clean water", "in good order": an article or a "with" leads to the thing that is so.
function isOfNoun(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [lead, said] = [pieceOf(items[i - 1]), pieceOf(items[i])];
  if (lead === null || said === null || isPaused(tokens, lead)) return false;
  return isSmall(lead, 'article') || LEADS.test(tokens[said.from - 1]?.word ?? '');
}

const LEADS = /^(with|of|in|by|using|under)$/;

// "Can touch his ear with that hand no problem": so easily, and nothing is called normal.
const isWithEase = (tokens: readonly Token[], { from, to }: Piece): boolean =>
  /^no (problem|problems|trouble|bother)$/.test(saidIn(tokens, from, to)) &&
  tokens[from - 1]?.pause === '' &&
  tokens
    .slice(Math.max(0, from - 9), from)
    .some(({ word }) => /^(can|able|could|touches|lifts|does)$/.test(word));

const hasUnknown = (items: readonly Item[], from: number, to: number): boolean =>
  items.slice(from, to).some((item) => hasRole(item, 'unknown'));
