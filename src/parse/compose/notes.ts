// Keeps as a note every word of substance that found no place, so that nothing said is lost.

import type { Clause } from '../clauses/clause.ts';
import { mayHoldAnswer } from '../clauses/may-answer.ts';
import { isToldBehind } from '../clauses/told-behind.ts';
import { isLikely, isSmall, marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused, type Span, spanned } from '../span.ts';
import type { Token } from '../token.ts';
import { answeredPlace } from './bare-no.ts';
import { isSideInVain } from './corrections/other-side.ts';
import { endTold } from './questions/motor-told.ts';
import { saidInSmallWords } from './small-words.ts';
import { SUBSTANCE } from './substance.ts';
import { isPlaced, note, type Talk } from './talk.ts';
import { tellsOfSomebody } from './tells-of-somebody.ts';
import { isHeard, unheardDenials } from './unheard-denials.ts';

const PLACES: ReadonlySet<Role> = new Set(['side', 'part', 'same']);

/** Notes what the clauses left over. A clause that gave nothing is kept whole; of another, the stretch that was left. */
export function noteLeftovers(talk: Talk): void {
  const left: { span: Span; whole: boolean; clause: Clause }[] = [];
  for (const [i, clause] of talk.clauses.entries()) {
    const answered = answeredPlace(talk, talk.clauses[i - 1], clause);
    if (answered !== null) {
      left.push({ span: answered, whole: false, clause });
      continue;
    }
    const kept = new Set([
      ...clause.pieces.filter((piece) => isOwed(talk, piece) || isOwedPlace(talk, clause, piece)),
      ...unheardDenials(talk, clause),
      ...saidInSmallWords(talk, clause),
    ]);
    const owed = WHOLLY_OWED.some((isOwed) => isOwed(talk, clause))
      ? clause.pieces
      : clause.pieces.filter((piece) => kept.has(piece));
    if (owed.length === 0 || !keeps(talk, clause, owed)) continue;
    const gave = clause.pieces.some(
      (piece) => !owed.includes(piece) && SUBSTANCE.has(piece.role) && isPlaced(talk, piece),
    );
    // Of a question a word alone would tell nobody what was asked.
    const span =
      gave && clause.mood !== 'question' && !tellsNotTo(talk, clause) && !isToldHow(talk, clause)
        ? withNeighbours(talk, clause, owed)
        : withoutLead(clause);
    const last = left.at(-1);
    // A breath that was cut by its moods ("the helicopter | needs a landing zone") is kept as it was said.
    const goesOn =
      last?.whole === true && !gave && last.clause.pause === '' && last.clause.sentence === clause.sentence;
    if (goesOn && last !== undefined && last.span.to >= (clause.pieces[0]?.from ?? 0)) {
      left[left.length - 1] = { span: { from: last.span.from, to: span.to }, whole: true, clause };
    } else left.push({ span, whole: !gave, clause });
  }
  for (const { span } of left) note(talk, span);
}

// Nobody asks for so long in one breath: something may have been told on the way.
const LONGEST_QUESTION = 20;

function isRunOn(talk: Talk, clause: Clause): boolean {
  const { from, to } = spanned(clause.pieces);
  return (
    clause.mood === 'question' &&
    (to - from > LONGEST_QUESTION ||
      (mayHoldAnswer(clause.pieces, talk.tokens) && !isTold(talk, clause)) ||
      isCriedOut(talk, clause) ||
      isAnsweredInside(talk, clause))
  );
}

// "Can you swallow yes but it catches": kept with the words of the question, so that it is understood.
const isBehind = (talk: Talk, clause: Clause): boolean =>
  isToldBehind(clause, talk.tokens) && !clause.pieces.some((piece) => isHeard(talk, piece));

// "Any medical problems asthma": what may have answered was stated already.
const isTold = (talk: Talk, { pieces }: Clause): boolean =>
  pieces.every((piece) => isPlaced(talk, piece)) && pieces.some((piece) => isHeard(talk, piece));

// "Does this hurt ow": with no yes behind it the cry is all that answers.
const isCriedOut = ({ clauses }: Talk, clause: Clause): boolean =>
  clause.pause !== 'ask' &&
  clause.pieces.some((piece) => marked(piece, 'exclaim')) &&
  clauses[clauses.indexOf(clause) + 1]?.mood !== 'answer';

// "Correction, V": what put nothing right is kept, however small its words are.
const isInVain = (talk: Talk, { mood, pieces }: Clause): boolean =>
  mood === 'correction' &&
  pieces.some(({ role }) => role !== 'correction' && role !== 'talk') &&
  !pieces.some((piece) => isPlaced(talk, piece));

// "Had a bad back years ago": of long ago a place is kept, though its word may be another.
const isOfThen = (talk: Talk, { mood, pieces }: Clause): boolean =>
  mood === 'past' && pieces.some((piece) => piece.role === 'site' && !isPlaced(talk, piece));

// "How old is he, forty six": a number behind a pause, in a question without its mark, may be the answer.
const isAnsweredInside = ({ tokens }: Talk, { pieces, pause }: Clause): boolean =>
  pause !== 'ask' &&
  pieces.some(({ islands: [island], from }) =>
    (island?.slots ?? []).some(
      (slot) =>
        slot.from > (pieces[0]?.from ?? 0) &&
        isBehindPause(tokens, slot.from, from) &&
        !isScale(tokens, slot),
    ),
  );

// "From nought to ten", "out of ten".
const isScale = (tokens: readonly Token[], { from, to }: Span): boolean =>
  /^(to|or|out)$/.test(tokens[to]?.word ?? '') || /^(to|or|of)$/.test(tokens[from - 1]?.word ?? '');

const isBehindPause = (tokens: readonly Token[], at: number, from: number): boolean =>
  tokens.slice(Math.max(0, from - 1), at).some(({ pause }) => pause !== '');

/** What makes all words of a clause be kept as one note. */
const WHOLLY_OWED: readonly ((talk: Talk, clause: Clause) => boolean)[] = [
  isRunOn,
  isBehind,
  isInVain,
  isSideInVain,
  isOfThen,
];

// A place that was looked at says where the words that were left belong.
const WHERE: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

/** The stretch that was left, with the words around it that nothing else took: "otherwise unremarkable", "did cry at once". */
function withNeighbours(talk: Talk, { pieces }: Clause, owed: readonly Piece[]): Span {
  const isFree = (piece: Piece | undefined): boolean =>
    piece !== undefined && piece.role !== 'talk' && !isPlaced(talk, piece) && !isSmall(piece, 'join');
  const belongs = (piece: Piece | undefined): boolean =>
    isFree(piece) || (piece !== undefined && WHERE.has(piece.role) && !isHeard(talk, piece));
  let from = pieces.indexOf(owed[0] as Piece);
  let to = pieces.indexOf(owed.at(-1) as Piece);
  while (belongs(pieces[from - 1]) && !isPaused(talk.tokens, pieces[from - 1] as Piece)) from--;
  const goesOn = (piece: Piece | undefined): boolean =>
    belongs(piece) || (piece?.role === 'talk' && !isPlaced(talk, piece));
  while (goesOn(pieces[to + 1]) && !isPaused(talk.tokens, pieces[to] as Piece)) to++;
  return spanned(pieces.slice(from, to + 1));
}

function isOwed(talk: Talk, piece: Piece): boolean {
  if (isPlaced(talk, piece)) return false;
  if (piece.role === 'unknown') return isWord(talk, piece);
  if (piece.role === 'finding' && piece.weak) return !isLikely(piece, 'soft');
  return SUBSTANCE.has(piece.role) && !piece.weak;
}

const isWord = (talk: Talk, piece: Piece): boolean =>
  /[\p{L}\p{N}]/u.test(talk.tokens[piece.from]?.word ?? '');

// "Right lower and left lower, same": places and nothing else, which no site took up.
function isOwedPlace(talk: Talk, clause: Clause, piece: Piece): boolean {
  if (
    clause.mood === 'question' ||
    clause.mood === 'instruction' ||
    !PLACES.has(piece.role) ||
    isPlaced(talk, piece)
  )
    return false;
  // "Right ankle and left hip are both sore": it counts them.
  const places = clause.pieces.filter(({ role }) => role === 'site').length;
  const isCount = talk.tokens[piece.to - 1]?.word === 'both';
  if (isCount && marked(piece, 'side', 'both') && places > 1) return false;
  return !piece.weak || clause.pieces.filter(({ role }) => PLACES.has(role)).length > 1;
}

// "Don't rub it": without its first words the note would tell the opposite.
const tellsNotTo = ({ tokens }: Talk, { mood, pieces }: Clause): boolean =>
  mood === 'instruction' &&
  pieces.some(
    (piece) => piece.role === 'mood' && tokens.slice(piece.from, piece.to).some(({ word }) => word === 'not'),
  );

const STRENGTH = /^(equal|equally|unequal|strong|stronger|weak|weaker|firm|even|same|feeble|poor)$/;

const isToldHow = (talk: Talk, { pieces, mood }: Clause): boolean =>
  mood === 'instruction' &&
  pieces.some(({ role, from }) => role === 'unknown' && STRENGTH.test(talk.tokens[from]?.word ?? '')) &&
  endTold(talk, pieces) !== null;

// An instruction is kept only where it holds a reading or several words that nobody knows: then it may be none.
function keeps(talk: Talk, clause: Clause, owed: readonly Piece[]): boolean {
  if (clause.mood !== 'instruction') return true;
  // "Don't give him aspirin": what is forbidden is no talk to the patient.
  if (clause.pieces.some((piece) => marked(piece, 'forbids')) || tellsOfSomebody(talk, clause)) return true;
  if (owed.some((piece) => marked(piece, 'exclaim'))) return true;
  if (isBehind(talk, clause)) return true;
  // "Squeeze my hands, equal": how it went is told in words that nobody knows.
  if (isToldHow(talk, clause)) return true;
  const unknown = owed.filter((piece) => piece.role === 'unknown').length;
  return unknown > 1 || owed.some((piece) => piece.role === 'vital' && piece.islands[0]?.slots.length !== 0);
}

const withoutLead = ({ pieces }: Clause) => {
  const first = pieces.findIndex((piece) => piece.role !== 'talk');
  return spanned(pieces.slice(Math.max(0, first)));
};
