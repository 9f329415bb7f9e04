// Everything a stretch of pieces states: vital signs and history by themselves, the examination in between.

import { figureIn, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { withPulseOnes } from '../pieces/pulse-one.ts';
import { spanned } from '../span.ts';
import { contrast, lendSite, tailIn } from './contrast/index.ts';
import { echoIn, sayAgain } from './echo.ts';
import { stateExam } from './exam/exam.ts';
import { itemsOf } from './exam/items.ts';
import { stateHistory } from './history/history-said.ts';
import { isComingOff, isDenied, isOfCheck, isOfSwelling } from './history/not-told.ts';
import { splitOnset } from './history/split-onset.ts';
import { asCsm, isPulseOfLimb, withLimbPulse } from './limb-pulse.ts';
import { denyAlso } from './negations/none-also.ts';
import { reachIn } from './negations/reach.ts';
import { sameAgain, sameIn } from './same.ts';
import { isJoin, sayingsIn } from './sayings/index.ts';
import { isPlaced, type Talk } from './talk.ts';
import { stateLaterFigure } from './vitals/later-figure.ts';
import { isDeniedSign, isFormer } from './vitals/not-now.ts';
import { isNoResponseOfAll, isOfLimbLookedAt, isOfSite } from './vitals/of-a-place.ts';
import { statePupilSizes } from './vitals/pupil-sizes.ts';
import { statePupilWords } from './vitals/pupil-words.ts';
import { stateNow } from './vitals/sign-now.ts';
import { stateTimedFigure } from './vitals/timed-figure.ts';
import { stateUnnamed } from './vitals/unnamed.ts';
import { stateVital } from './vitals/vital-said.ts';

/** The roles that state something of the patient besides a site. */
export const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history']);

/** States what these pieces say, in the order said. */
export function stateAll(talk: Talk, pieces: readonly Piece[]): void {
  for (const part of sayingsIn(pieces, talk.tokens)) statePart(talk, part);
}

function statePart(talk: Talk, all: readonly Piece[]): void {
  const also = denyAlso(talk, all);
  const pieces = all.slice(also);
  if (pieces.length === 0) return;
  if (also > 0) {
    const [joint] = pieces;
    stateAll(talk, joint !== undefined && isJoin(joint) ? pieces.slice(1) : pieces);
    return;
  }
  const same = sameIn(talk, pieces);
  if (same === null) {
    if (!stateEcho(talk, pieces)) stateSides(talk, pieces);
    return;
  }
  // What stands before it in the clause is the place it is said of, or a statement of its own.
  const at = pieces.indexOf(same);
  const before = pieces.slice(0, at);
  if (before.some(({ role }) => STATING.has(role))) stateAll(talk, before);
  const taken = sameAgain(talk, pieces, same);
  const after = pieces.slice(at + 1 + taken);
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
    const sizes = piece.role === 'side' ? statePupilSizes(talk, pieces, i) : statePupilWords(talk, pieces, i);
    if (sizes > 0) i += sizes - 1;
    else if (isComingOff(pieces, i) || isOfCheck(talk, pieces, i) || isOfSwelling(pieces, i))
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
    else if (isNoResponseOfAll(pieces, i, talk.tokens)) stretch.push({ ...piece, role: 'unknown' });
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
    } else {
      // "Pain score six at ten past and three at twenty past": its score is stated before the next one.
      if (stretch.some(isScore) && figureIn(piece) !== null && pieces[i + 1]?.role === 'time') flush();
      const isStated =
        stateLaterFigure(talk, pieces, i) || stateTimedFigure(talk, pieces, i) || stateNow(talk, pieces, i);
      if (!isStated) stretch.push(piece);
    }
  }
  flush();
}

const isScore = ({ role, islands: [island] }: Piece): boolean =>
  role === 'vital' && island?.rule === 'vitals.pain-score' && island.slots.length > 0;

// The pieces of this utterance before these.
const readBefore = ({ clauses }: Talk, [first]: readonly Piece[]): readonly Piece[] =>
  first === undefined ? [] : clauses.flatMap(({ pieces }) => pieces.filter(({ to }) => to <= first.from));
