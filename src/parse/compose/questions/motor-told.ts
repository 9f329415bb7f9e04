// "Squeeze my fingers for us", "wiggle your toes": who is told to move a limb's end can answer as to a question; the answer is a check where
// one end is named or in mind, and is kept beside what was told where none is.

import type { Clause } from '../../clauses/clause.ts';
import { isAnswer } from '../../clauses/place.ts';
import type { LimbEnd } from '../../context.ts';
import { isSmall, type Piece, type Role } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { StateAll } from '../corrections/dry-run.ts';
import { toEnd } from '../csm/limb-ends.ts';
import { itemsOf } from '../exam/items.ts';
import { isLight } from '../light.ts';
import { phrasesIn } from '../sites/item.ts';
import { bear, type Talk, textOf } from '../talk.ts';

const BY_HAND =
  /\b(squeeze|grip)( (my|our|both|these|those|two|hold|of|on|to|the))* (hands?|fingers?)\b|\bmake a fist\b|\b(wiggle|wriggle)( (your|those|these|the|all))* (fingers|thumb)\b/;
const BY_FOOT =
  /\b(wiggle|wriggle)( (your|those|these|the|all))* toes\b|\b(push|pull|press|point)( (down|up|back|forward|against|on|with|my|hands?|your|the|both|those))* (feet|foot|toes)\b/;

const BY_ANY = /\b(push|pull|press)( (down|up|back|against|on|in|out))* (my|our) hands?\b/;

/** The end that these words tell somebody to move, `any` where they do not say which, or null. */
export function endTold({ tokens }: Talk, pieces: readonly Piece[]): 'hand' | 'foot' | 'any' | null {
  const { from, to } = spanned(pieces);
  const words = saidIn(tokens, from, to);
  if (BY_HAND.test(words)) return 'hand';
  return BY_FOOT.test(words) ? 'foot' : BY_ANY.test(words) ? 'any' : null;
}

/** Opens the check that such words ask for; false for other words. */
export function asksToMove(talk: Talk, pieces: readonly Piece[]): boolean {
  const site = endTold(talk, pieces);
  if (site === null) return false;
  const { from, to } = spanned(pieces);
  const ends = endsMeant(talk, pieces, site);
  bear(talk, {
    asked: ends.length > 0 ? { about: 'csm', aspects: ['motion'], ends } : null,
    askedBefore: null,
    question: textOf(talk, from, to),
    asking: true,
    isSaidLast: false,
  });
  return true;
}

// The ends that are named with their side, or else the one that is in mind.
function endsMeant(talk: Talk, pieces: readonly Piece[], told: 'hand' | 'foot' | 'any'): readonly LimbEnd[] {
  const named = phrasesIn(itemsOf(talk, pieces)).flatMap(({ mine, sites }) => (mine ? [] : sites));
  const sided = named.filter(({ side, sideKnown }) => side !== null && sideKnown === 'spoken');
  const refs = sided.length > 0 ? sided : talk.context.sites;
  const ends = refs
    .flatMap((ref) => toEnd(ref, null))
    .filter(({ site, side }) => side !== null && (told === 'any' || site === told));
  return ends.slice(0, 1).map(({ digit: _, ...end }) => end);
}

/** "Wiggle your toes on the left, yep": reads what was told and its answer in one clause; false for any other clause. */
export function toldAndAnswered(
  talk: Talk,
  clause: Clause,
  stateAll: StateAll,
  read: (talk: Talk, clause: Clause) => void,
): boolean {
  const { pieces } = clause;
  const at = pieces.findIndex((piece, k) => k > 0 && isAnswer(piece) && piece.role === 'answer');
  const [head, answer] = [pieces.slice(0, Math.max(at, 0)), pieces.slice(at)];
  if (!tellsToMove(talk, { ...clause, pieces: head }) || !answer.every(isLight)) return false;
  stateAll(talk, head);
  asksToMove(talk, head);
  read(talk, { ...clause, pieces: answer });
  return true;
}

const TELLING: ReadonlySet<Role> = new Set(['csm', 'small', 'site', 'side', 'mood', 'talk']);

/** True for a clause that tells somebody to move a limb's end in words that could also state it: "wiggle your toes for us". */
export const tellsToMove = (talk: Talk, { pieces, mood }: Clause): boolean =>
  mood === 'statement' &&
  talk.context.asked === null &&
  pieces.every(({ role, weak }) => TELLING.has(role) && (role !== 'csm' || weak)) &&
  pieces.some(({ role }) => role === 'csm') &&
  pieces.some((piece) => isSmall(piece, 'you')) &&
  endTold(talk, pieces) !== null;
