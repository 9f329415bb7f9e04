// Reads one clause by its mood: states, asks, answers, corrects, strikes, marks; or leaves it to be kept in words.

import type { Clause, Mood } from '../clauses/clause.ts';
import type { SiteRef } from '../context.ts';
import type { Command } from '../frame.ts';
import { marked, type Piece, tagIn } from '../pieces/piece.ts';
import { spanned } from '../span.ts';
import { saidIn } from '../token.ts';
import { turnsLastSaid } from './corrections/answer-turned.ts';
import { takesBackCare } from './corrections/care-not-given.ts';
import { tellsDoseAnew } from './corrections/dose-told-anew.ts';
import { wouldSay } from './corrections/dry-run.ts';
import { explainsAway } from './corrections/explained-away.ts';
import { foundOnOther } from './corrections/found-on-other.ts';
import { timeAnew } from './corrections/late-time.ts';
import { saysOnlyThisSide } from './corrections/only-this-side.ts';
import { turnsToOtherSide } from './corrections/other-side.ts';
import { timesCare } from './corrections/time-of-care.ts';
import { timesDose } from './corrections/time-of-dose.ts';
import { tellsOnlyAnew } from './corrections/told-anew.ts';
import { turnedThenTold } from './corrections/turned-then-told.ts';
import { endOf } from './csm/limb-ends.ts';
import { isEndNamed } from './csm/of-what.ts';
import { itemsOf } from './exam/items.ts';
import { tellsByFall } from './named-by-fall.ts';
import { openRecord } from './open-record.ts';
import { patient } from './patient.ts';
import { problem } from './problem.ts';
import { askedToMove } from './questions/asked-to-move.ts';
import { asksToMove, tellsToMove, toldAndAnswered } from './questions/motor-told.ts';
import { tellNamed } from './questions/named-in-question.ts';
import { noteAnswer } from './questions/note-answer.ts';
import { asksOutOfTen } from './questions/out-of-ten.ts';
import { ask, askQuietly } from './questions/question.ts';
import { answersTold, tellFound, tellReadings } from './questions/told-in-question.ts';
import { answersUsual } from './questions/usual.ts';
import { readCorrection, readStrike } from './repair.ts';
import { phrasesIn } from './sites/item.ts';
import { wholeSite } from './sites/site-ref.ts';
import { stateAll } from './state-all.ts';
import { readAnswer, readStatement } from './statement.ts';
import { bear, isPlaced, place, spanOf, state, type Talk, textOf } from './talk.ts';
import { tellsOfSomebody } from './tells-of-somebody.ts';
import { timesFor } from './times.ts';

// Supposed, planned, somebody else's, the examiner's own, long ago: no finding, and not lost either.
const leave = (): void => {};

const READERS: Readonly<Record<Mood, (talk: Talk, clause: Clause) => void>> = {
  statement: readStatement,
  question,
  answer: readAnswer,
  correction: readCorrection,
  strike: readStrike,
  mark,
  command,
  problem,
  patient,
  instruction,
  supposing: leave,
  plan: leave,
  others: leave,
  own: leave,
  past: recall,
};

// "I had a rash on my chest last year": no finding, and the place that a "there" may mean.
function recall(talk: Talk, { pieces }: Clause): void {
  const refs = phrasesIn(itemsOf(talk, pieces)).flatMap(({ sites }) => sites);
  bear(talk, { recalled: refs.map(wholeSite) });
}

/** Reads one clause into the talk's frames and context. */
export function readClause(talk: Talk, clause: Clause): void {
  // A free answer may have taken this clause in already.
  if (clause.pieces.every((piece) => isPlaced(talk, piece))) return;
  const parted = turnedThenTold(talk, clause);
  if (parted !== null) {
    for (const one of parted) readClause(talk, one);
    return;
  }
  talk.times = timesFor(talk, clause);
  if (namesRelative(talk, clause)) {
    noteAnswer(talk, spanned(clause.pieces));
    place(talk, ...clause.pieces);
    return;
  }
  if (
    answersTold(talk, clause) ||
    tellsDoseAnew(talk, clause) ||
    timeAnew(talk, clause) ||
    timesCare(talk, clause) ||
    timesDose(talk, clause) ||
    takesBackCare(talk, clause) ||
    saysOnlyThisSide(talk, clause) ||
    turnsToOtherSide(talk, clause) ||
    foundOnOther(talk, clause, readStatement) ||
    turnsLastSaid(talk, clause, stateAll) ||
    tellsOnlyAnew(talk, clause, stateAll) ||
    explainsAway(talk, clause) ||
    answersUsual(talk, clause) ||
    asksOutOfTen(talk, clause) ||
    toldAndAnswered(talk, clause, stateAll, readStatement) ||
    tellsByFall(talk, clause, readStatement)
  )
    return;
  const tells = tellsToMove(talk, clause);
  READERS[answersInPast(talk, clause) || answersWhen(talk, clause) ? 'statement' : clause.mood](talk, clause);
  if (tells) asksToMove(talk, clause.pieces);
}

// "Any history of heart disease?" "My dad.": it is not the patient who had it.
const namesRelative = ({ context: { asked } }: Talk, { mood, pieces }: Clause): boolean =>
  mood === 'others' &&
  asked?.about === 'topic' &&
  asked.topic === 'past-history' &&
  pieces.every(({ role }) => role === 'small' || role === 'mood' || role === 'answer');

// "Ever had this before?" "Once last year": what was long ago is what was asked after.
const answersInPast = ({ tokens, context: { asked } }: Talk, { mood, pieces }: Clause): boolean =>
  (mood === 'past' ||
    mood === 'others' ||
    (mood === 'plan' && TIES.test(tokens[pieces[0]?.from ?? -1]?.word ?? ''))) &&
  asked?.about === 'topic' &&
  pieces.every(
    ({ role }) =>
      role === 'small' ||
      role === 'mood' ||
      role === 'figure' ||
      role === 'answer' ||
      (mood === 'past' && (role === 'unknown' || role === 'negation')) ||
      // "Any allergies?" "Only plasters, they gave me a rash as a child."
      (mood === 'past' && asked.topic === 'allergies' && role === 'finding') ||
      // "Any operations?" "Had my right hip replaced four years ago."
      (mood === 'past' &&
        asked.topic === 'past-history' &&
        (role === 'site' || role === 'side' || role === 'part')),
  );

// "What makes it worse?" "When I stand up.", "if I lie still": it supposes nothing.
const answersWhen = ({ tokens, context: { asked } }: Talk, { mood, pieces }: Clause): boolean =>
  (mood === 'supposing' || mood === 'plan' || mood === 'instruction') &&
  asked?.about === 'topic' &&
  asked.topic === 'provocation' &&
  /^(when|whenever|if|while|after) (i|he|she|they|we) /.test(
    saidIn(tokens, pieces[0]?.from, (pieces[0]?.from ?? 0) + WHEN),
  );
const WHEN = 3;

// "When did you last go?" "Before we set off."
const TIES = /^(before|after|when|once|while)$/;

function question(talk: Talk, clause: Clause): void {
  const found = tellFound(talk, clause, stateAll);
  if (found !== clause.pieces) {
    if (found.length > 0) stateAll(talk, found);
    return;
  }
  const named = tellNamed(talk, clause, stateAll);
  if (named.length === 0) return;
  const pieces = tellReadings(talk, clause, stateAll);
  // A question that tells nothing is found among the clauses as it stands.
  if (pieces.length > 0) ask(talk, pieces === clause.pieces ? clause : { ...clause, pieces });
}

function mark(talk: Talk, clause: Clause): void {
  const span = spanned(clause.pieces);
  const rest = clause.pieces.slice(1);
  const text = textOf(talk, rest[0]?.from ?? span.from, span.to);
  state(talk, [{ statement: { kind: 'mark', text }, ...span }]);
  // What is marked may be a statement too: "mark the time, tourniquet on the left thigh".
  if (wouldSay(talk, rest, stateAll).length > 0) stateAll(talk, rest);
  place(talk, span);
}

function command(talk: Talk, clause: Clause): void {
  const [piece, ...rest] = clause.pieces;
  const said = piece === undefined ? null : (tagIn(piece, 'commands.command', 'command') as Command | null);
  if (piece === undefined || said === null) return;
  if (said === 'open-record') {
    openRecord(talk, piece);
    return;
  }
  talk.frames.push({
    frame: 'command',
    command: said,
    heard: textOf(talk, piece.from, piece.to),
    span: spanOf(talk, piece.from, piece.to),
  });
  place(talk, piece);
  if (rest.length > 0) stateAll(talk, rest);
}

// "Wiggle your toes for me" finds nothing. "Tell me if it hurts" asks all the same, though it leaves no visit.
function instruction(talk: Talk, clause: Clause): void {
  if (clause.pieces.some((piece) => marked(piece, 'tell-if') || marked(piece, 'mood', 'supposing')))
    askQuietly(talk, clause);
  // "Can you lift your leg?" can be answered, and the answer is none to what was asked before.
  else if (asksToMove(talk, clause.pieces)) {
    // Its answer may follow.
  } else if (asksToDo(talk, clause)) {
    const { from, to } = spanned(clause.pieces);
    bear(talk, { asked: null, askedBefore: null, question: textOf(talk, from, to), asking: true });
    const asked = askedToMove(talk, clause);
    if (asked !== null) bear(talk, { asked });
  }
  // "Wriggle the toes on your left foot": what is felt and answered next is there.
  const phrases = phrasesIn(itemsOf(talk, clause.pieces)).filter(({ mine }) => !mine);
  const refs = phrases.flatMap(({ sites }) => sites);
  const told = ofOneEnd(refs);
  if (told !== null) bear(talk, { sites: [wholeSite(told)] });
  if (tellsOfSomebody(talk, clause)) return;
  // "Lift your arm for me, ouch": what hurts there nobody can tell, and it must not be lost.
  place(
    talk,
    ...clause.pieces.filter(
      // A figure goes with the words that nobody knows, where those are kept.
      (piece) => !isLeftInInstruction(piece, clause.pieces) && !marked(piece, 'exclaim'),
    ),
  );
}

// "Squeeze my fingers on three" counts, and says nothing.
const isLeftInInstruction = ({ role }: Piece, all: readonly Piece[]): boolean =>
  role === 'unknown' ||
  role === 'vital' ||
  (role === 'figure' && all.filter((piece) => piece.role === 'unknown').length > 1);

// "Your toes on the left foot": both names are of one limb's end, and its side was said.
function ofOneEnd(refs: readonly SiteRef[]): SiteRef | null {
  const [first] = refs;
  const sided = refs.find(({ sideKnown }) => sideKnown === 'spoken');
  if (first === undefined || sided === undefined) return null;
  const isOne = refs.every(
    (ref) => (ref.sideKnown !== 'spoken' || ref.side === sided.side) && endOf(ref.site) === endOf(sided.site),
  );
  if (refs.length > 1 && (!isOne || !isEndNamed(refs))) return null;
  return { ...first, side: sided.side, sideKnown: 'spoken' };
}

const asksToDo = ({ tokens }: Talk, { pieces }: Clause): boolean => {
  const first = pieces.find(({ role }) => role !== 'talk' && role !== 'small');
  return first?.role === 'mood' && /^(can|could|are)$/.test(tokens[first.from]?.word ?? '');
};
