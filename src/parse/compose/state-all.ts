// Everything a stretch of pieces states: vital signs and history by themselves, the examination in between.

import { isLikely, isSmall, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { withPulseOnes } from '../pieces/pulse-one.ts';
import { isPaused, spanned } from '../span.ts';
import type { Token } from '../token.ts';
import { contrast, lendSite, tailIn } from './contrast/index.ts';
import { toEnd } from './csm/limb-ends.ts';
import { echoIn, sayAgain } from './echo.ts';
import { stateExam } from './exam/exam.ts';
import { itemsOf } from './exam/items.ts';
import { stateHistory } from './history/history-said.ts';
import { splitOnset } from './history/split-onset.ts';
import { asCsm, isPulseOfLimb, withLimbPulse } from './limb-pulse.ts';
import { type Reach, reachIn } from './negations/reach.ts';
import { sameAgain, sameIn } from './same.ts';
import { isPlaced, type Talk, timeOf } from './talk.ts';
import { isBefore } from './vitals/before.ts';
import { stateUnnamed } from './vitals/unnamed.ts';
import { stateVital } from './vitals/vital-said.ts';

/** The roles that state something of the patient besides a site. */
export const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history']);

/** States what these pieces say, in the order said. */
export function stateAll(talk: Talk, pieces: readonly Piece[]): void {
  const same = sameIn(talk, pieces);
  if (same === null) {
    if (!stateEcho(talk, pieces)) stateSides(talk, pieces);
    return;
  }
  // What stands before it in the clause is the place it is said of, or a statement of its own.
  const at = pieces.indexOf(same);
  const [before, after] = [pieces.slice(0, at), pieces.slice(at + 1)];
  if (before.some(({ role }) => STATING.has(role))) stateAll(talk, before);
  sameAgain(talk, pieces, same);
  if (after.length > 0) stateAll(talk, after);
}

// "L three is tender, L four is not": what stands before the echo is stated first, and what stands after it next.
function stateEcho(talk: Talk, pieces: readonly Piece[]): boolean {
  const echo = talk.context.asked === null ? echoIn(talk, pieces) : null;
  if (echo === null) return false;
  const before = pieces.slice(0, echo.from);
  const isSaid = before.some(({ role }) => STATING.has(role));
  // "Belly soft." "The chest is.": a bare "is" answers what was said in the same breath.
  if (!isSaid && (talk.context.last.length === 0 || echo.says === 'so')) return false;
  if (isSaid) stateAll(talk, before);
  if (!sayAgain(talk, pieces, echo)) stateSides(talk, pieces.slice(isSaid ? echo.from : 0));
  else if (echo.to < pieces.length) stateAll(talk, pieces.slice(echo.to));
  return true;
}

// "Strong on the right, weak on the left": what is said of the one side, and then of the other.
function stateSides(talk: Talk, said: readonly Piece[]): void {
  const pieces = withPulseOnes(said, talk.tokens);
  // "Pulse in the left foot, none in the right": the pulse of a limb is turned as its other checks are.
  const tail = tailIn(
    withLimbPulse(pieces),
    talk.tokens,
    talk.context.asked === null ? talk.context.last : [],
  );
  if (tail === null) {
    stateInOrder(talk, pieces);
    return;
  }
  lendSite(talk, pieces, tail);
  const [before, after] = [pieces.slice(0, tail.from), pieces.slice(tail.to)];
  const isGone = tail.state === 'none' || tail.state === 'absent';
  if (before.length > 0) stateInOrder(talk, isGone ? before.map(asTurned) : before);
  contrast(talk, pieces, tail);
  if (after.length > 0 && !givesCause(talk, after)) stateAll(talk, after);
}

// "Not with the right because of pain": the pain is why, and of which side it is said must not be guessed.
const givesCause = ({ tokens }: Talk, after: readonly Piece[]): boolean =>
  /^(because|due|from)$/.test(tokens[after[0]?.from ?? -1]?.word ?? '') &&
  after.every(({ role }) => role !== 'site');

// "Pulse left foot, none right": what the other side lacks is there on this one.
const asTurned = (piece: Piece): Piece => ({
  ...piece,
  islands: piece.islands.map((island) =>
    island.rule.startsWith('csm.')
      ? { ...island, tags: [...island.tags, { key: 'turned', value: '' }] }
      : island,
  ),
});

function stateInOrder(talk: Talk, all: readonly Piece[]): void {
  const pieces = splitOnset(talk.tokens, all);
  stateUnnamed(talk, pieces);
  let stretch: Piece[] = [];
  const flush = () => {
    if (stretch.length > 0) stateExam(talk, stretch);
    stretch = [];
  };
  // Only what is told is looked up in it; without that it need not be worked out.
  const isAsked = pieces.some(({ role }) => role === 'history' || role === 'limbs');
  const reach = isAsked ? reachIn(itemsOf(talk, pieces), talk.tokens, spanned(pieces).to) : null;
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i];
    if (piece === undefined) continue;
    if (isComingOff(pieces, i) || isOfCheck(pieces, i) || isOfSwelling(pieces, i))
      stretch.push({ ...piece, role: 'unknown' });
    else if (piece.role === 'history') {
      const end = stateHistory(talk, pieces, i, reach !== null && isDenied(talk, pieces, i, reach));
      flush();
      while ((pieces[i + 1]?.from ?? end) < end) i++;
    } else if (
      piece.role === 'vital' &&
      (isOfSite(piece, pieces) ||
        isOfLimbLookedAt(talk, pieces, i) ||
        isPulseOfLimb(piece, pieces, () => readBefore(talk, pieces)))
    )
      stretch.push(asCsm(piece));
    else if (isOfLimbs(pieces, i, talk.tokens)) stretch.push({ ...piece, role: 'unknown' });
    else if (piece.role === 'vital' && piece.islands[0]?.rule !== 'vitals.pain-score') {
      const isNow = !isFormer(talk, pieces, i) && !isDeniedSign(talk, pieces, i);
      const taken = isNow ? stateVital(talk, pieces, i) : 0;
      // "I have got one, good": no rate, but a pulse.
      const isCheck = isNow && (piece.islands[0]?.slots.length ?? 0) > 0 && readingOf(piece, 'csm') !== null;
      if (taken === 0) stretch.push(isCheck ? asCsm(piece) : piece);
      else {
        // The place of a cuff that stood before its reading went with it.
        stretch = stretch.filter((one) => one.role === 'small' || !isPlaced(talk, one));
        flush();
      }
      i += Math.max(0, taken - 1);
    } else stretch.push(piece);
  }
  flush();
}

// The pieces of this utterance before these.
const readBefore = ({ clauses }: Talk, [first]: readonly Piece[]): readonly Piece[] =>
  first === undefined ? [] : clauses.flatMap(({ pieces }) => pieces.filter(({ to }) => to <= first.from));

// "The tourniquet came off": said of care it tells how nobody was hurt.
const isComingOff = (pieces: readonly Piece[], i: number): boolean => {
  const piece = pieces[i];
  return (
    piece?.role === 'history' &&
    marked(piece, 'removal', 'after') &&
    pieces.slice(0, i).some(({ role }) => role === 'care')
  );
};

// "Swelling of the lips going down": what is no pain goes nowhere, it changes.
const isOfSwelling = (pieces: readonly Piece[], i: number): boolean => {
  const piece = pieces[i];
  if (piece === undefined || !marked(piece, 'topic', 'radiation')) return false;
  const found = pieces.slice(0, i).filter(({ role }) => role === 'finding');
  return found.length > 0 && found.every((one) => SHRINKS.some((finding) => marked(one, 'finding', finding)));
};

const SHRINKS = ['swelling', 'rash', 'bleeding', 'contusion'];

// "Foot pulse better after": said of a check of a limb it tells of no pain.
const isOfCheck = (pieces: readonly Piece[], i: number): boolean => {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || !marked(piece, 'topic', 'provocation')) return false;
  // "Arms are weak, worse on the left": a side is nothing that makes it worse.
  if (next?.role === 'side') return true;
  return before?.role === 'csm' || before?.role === 'vital';
};

// A "no" before a list reaches its names ("no allergies, medications or history"), and what is told in words only where it
// stands straight before them.
function isDenied(talk: Talk, pieces: readonly Piece[], i: number, reach: Reach): boolean {
  const [piece, before] = [pieces[i], pieces[i - 1]];
  if (piece === undefined) return false;
  // "Not dizzy or nauseous".
  const [or, one] = [before, pieces[i - 2]];
  if (or !== undefined && isSmall(or, 'or') && one?.role === 'history' && !isSmall(or, 'before'))
    return marked(one, 'denied') || isDenied(talk, pieces, i - 2, reach);
  // "Takes nothing, last ate at noon": what was denied was told by itself.
  if (before?.role === 'history' && marked(piece, 'topic', 'last-intake')) return false;
  const straight = before !== undefined && marked(before, 'negation', 'before');
  const isName = isLikely(piece, 'noun') || isLikely(piece, 'named');
  if (hasOwnText(talk, pieces, i)) return false;
  // "Wasn't knocked out, remembers it all": past a pause what has a verb of its own is told.
  if (!isName && before !== undefined && isPaused(talk.tokens, before)) return false;
  return reach.polarity(piece.from, !straight && !isName) === 'negated';
}

// "No allergies, meds ramipril": what has words of its own is told.
function hasOwnText({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || next?.role !== 'unknown' || !isLikely(piece, 'noun')) return false;
  return before?.role === 'history' && !isPaused(tokens, piece);
}

// "No response in the legs" is said of the legs and not of how awake somebody is.
const isOfLimbs = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const unanswered = pieces[i];
  // "No response to my questions" is none to pain before that was tried.
  if (unanswered !== undefined && marked(unanswered, 'avpu', 'U') && !isPaused(tokens, unanswered))
    if (tokens[unanswered.to]?.word === 'to') return true;
  const [piece, next] = [pieces[i], pieces.slice(i + 1).find((one) => !isSmall(one, 'article'))];
  if (piece === undefined || !marked(piece, 'vital', 'responsiveness') || next === undefined) return false;
  return (
    isSmall(next, 'preposition') &&
    pieces[pieces.indexOf(next) + 1] !== undefined &&
    leadsToSite(pieces, next)
  );
};

const leadsToSite = (pieces: readonly Piece[], from: Piece): boolean =>
  pieces.slice(pieces.indexOf(from) + 1).find(({ role }) => role !== 'small' && role !== 'side')?.role ===
  'site';

// "Left foot pale and cool" is said of the foot and not of the skin as a vital sign.
const isOfSite = (piece: Piece, pieces: readonly Piece[]): boolean =>
  marked(piece, 'bare') &&
  marked(piece, 'vital', 'skin') &&
  pieces.some(({ role, weak }) => role === 'site' && !weak);

// "Right foot: pink, warm, pulse present".
function isOfLimbLookedAt({ clauses, context }: Talk, pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  if (piece === undefined || !marked(piece, 'bare') || !marked(piece, 'vital', 'skin')) return false;
  const before = clauses.findLast((one) => one.pieces.every(({ to }) => to <= piece.from));
  const isLook =
    before?.pause === 'dash' &&
    before.pieces.every(({ role }) => role === 'site' || role === 'side' || role === 'small');
  return isLook && context.sites.some((ref) => toEnd(ref, null).length > 0);
}

// "One hundred over sixty, was one ten over seventy", "he was unresponsive when we came": what was before is no reading of
// now, and stays in words; said with its time it is one of then.
function isFormer(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  const isWord = piece !== undefined && marked(piece, 'avpu') && piece.islands[0]?.slots.length === 0;
  if (isWord && /^(was|were|been)$/.test(talk.tokens[piece.from - 1]?.word ?? ''))
    return timeOf(talk, piece) === undefined;
  if (piece !== undefined && (isBefore(talk, pieces, i) || isSuperseded(talk, pieces, i)))
    return timeOf(talk, piece) === undefined;
  const earlier = pieces.slice(0, i - 1).some((one) => one.role === 'vital' && isPlaced(talk, one));
  return before !== undefined && earlier && isSmall(before, 'was') && marked(pieces[i] as Piece, 'bare');
}

// "Sats were seventy nine when I put the probe on, they're ninety five now": the figure with "now" is the reading.
function isSuperseded({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const [piece, rest] = [pieces[i], pieces.slice(i + 1)];
  if (piece === undefined || rest.length === 0) return false;
  const words = tokens.slice(piece.from, piece.to + 2).map(({ word }) => word);
  if (!words.some((word) => /^(was|were)$/.test(word)) || marked(piece, 'num', 'former')) return false;
  const next = rest.findIndex(({ role }) => role === 'vital');
  const mine = next < 0 ? rest : rest.slice(0, next);
  return mine.some(
    ({ role, from, to }) =>
      role === 'figure' && [tokens[from - 1], tokens[to]].some((beside) => beside?.word === 'now'),
  );
}

// "Not alert", "does not respond to voice": a sign that is denied is none, and nobody can say what there is instead.
function isDeniedSign({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  if (piece === undefined || (piece.islands[0]?.slots.length ?? 0) > 0) return false;
  const before = pieces.slice(0, i).findLast((one) => one.role !== 'small');
  if (before === undefined || isPaused(tokens, before) || marked(before, 'plain')) return false;
  return marked(before, 'negation', 'before') || marked(before, 'answer', 'no');
}
