// Composes an answer: what was asked, said to be so or not; what cannot be settled by it is kept as a note.

import type { Clause } from '../../clauses/clause.ts';
import type { AskedOne } from '../../context.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { bear, note, place, type Talk } from '../talk.ts';
import { answerCsm } from './answer-csm.ts';
import { answerEach } from './answer-each.ts';
import { answerFindings } from './answer-findings.ts';
import { answerSide } from './answer-side.ts';
import { answerSides, sidesAnswered } from './answer-sides.ts';
import { answerTopic } from './answer-topic.ts';
import { type Answered, answerWord, wordOf } from './answer-word.ts';
import { noteAnswer } from './note-answer.ts';
import { saidNext } from './said-next.ts';
import { settledOf } from './settle.ts';
import { takenBack } from './taken-back.ts';

/** States what the answer settles. Returns the pieces after it that still have to be read. */
export function answer(talk: Talk, clause: Clause): readonly Piece[] {
  const { asked } = talk.context;
  const goesOn = saidNext(talk, clause);
  if (goesOn !== null) return [...answer(talk, { ...clause, pieces: goesOn.answer }), ...goesOn.next];
  if (answerEach(talk, clause)) return [];
  const ofPlaces = asked?.about === 'findings' || asked?.about === 'csm' ? asked : null;
  const bySide = ofPlaces === null ? null : sidesAnswered(clause);
  if (ofPlaces !== null && bySide !== null) {
    answerSides(talk, clause, ofPlaces, bySide);
    return [];
  }
  const said = answerWord(clause);
  if (said === null) return clause.pieces;
  const rest = clause.pieces.slice(said.heads.length);
  const taken = asked === null || said.word !== 'no' ? null : takenBack(talk, clause, rest);
  if (taken !== null) {
    bear(talk, { asked: null });
    noteAnswer(talk, spanned(taken));
    place(talk, ...taken);
    return [];
  }
  if (asked === null) return unsettled(talk, said, rest) ?? clause.pieces;
  bear(talk, { asked: null });
  // What was answered is asked no more: "does your head hurt? no. does your neck hurt? yes, yes".
  if (asked.about === 'findings') talk.questions = talk.questions.filter(({ text }) => text !== asked.text);
  place(talk, ...said.heads);
  const { also = [], ...one } = asked;
  if (also.length === 0) return answerOne(talk, one, said, rest);
  return answerAll(talk, [one, ...also], said, rest);
}

/** Settles one question; returns the pieces after the answer that still have to be read. */
function answerOne(
  talk: Talk,
  asked: AskedOne,
  { word, heads, severity }: Answered,
  rest: readonly Piece[],
): readonly Piece[] {
  const span = spanned(heads);
  if (asked.about === 'topic') return answerTopic(talk, asked, word, rest, span);
  if (asked.about === 'side') return answerSide(talk, asked, word, span, rest);
  if (asked.about === 'findings' && asked.done === true && word === 'unsure') {
    noteAnswer(talk, span);
    return rest;
  }
  if (asked.about === 'vital' || word === 'unsure') {
    note(talk, spanned([...heads, ...rest]));
    return [];
  }
  // "Can you feel this?" "Sort of.", "that's fine": neither intact nor gone.
  if (asked.about === 'csm' && (severity === 'mild' || heads.some((piece) => marked(piece, 'fine')))) {
    noteAnswer(talk, span);
    return rest;
  }
  if (asked.about === 'csm') return answerCsm(talk, asked, word, span, rest);
  const explicit = heads.some((piece) => marked(piece, 'explicit'));
  // "Is your elbow okay?" "No, it's fine": the words that call it fine say so.
  const isFine =
    heads.some((piece) => marked(piece, 'fine')) && asked.findings.some(({ present }) => !present);
  const mixed = !isFine && heads.some((piece) => (wordOf(piece) ?? word) !== word);
  const meant = isFine ? 'yes' : word;
  return answerFindings(talk, asked, { word: meant, severity, explicit, mixed, span }, rest);
}

// "No" denies all that was asked after in one breath, and "yes" finds every limb checked; the other way round it does not
// say which is meant.
function answerAll(
  talk: Talk,
  asked: readonly AskedOne[],
  said: Answered,
  rest: readonly Piece[],
): readonly Piece[] {
  const isTurned = asked.some(
    (one) => one.about === 'findings' && one.findings.some(({ present }) => !present),
  );
  const checks = asked.filter(({ about }) => about === 'csm').length;
  const settles = (said.word === 'no' && checks === 0) || (said.word === 'yes' && checks === asked.length);
  if (!settles || isTurned || asked.some(({ about }) => about === 'vital')) {
    noteAnswer(talk, spanned(said.heads));
    return rest;
  }
  const { asking } = talk;
  for (const one of asked) answerOne(talk, one, said, []);
  talk.asking = settledOf(talk, asking);
  return rest;
}

// "Did you hit your head?" "No": nothing is settled that the record knows, and the words are kept.
function unsettled(talk: Talk, { heads }: Answered, rest: readonly Piece[]): readonly Piece[] | null {
  const before = talk.clauses.filter(({ pieces }) => (pieces.at(-1)?.to ?? 0) <= (heads[0]?.from ?? 0));
  const question = before.findLast(({ mood }) => mood === 'question');
  if ((!talk.context.asking && question === undefined) || talk.context.question === null) return null;
  // "Is he awake?" "Yes, he's talking to me": what follows is a part of the answer where it states nothing itself.
  const whole = rest.every(({ role }) => role === 'small' || role === 'unknown') ? rest : [];
  noteAnswer(talk, spanned([...heads, ...whole]));
  place(talk, ...heads, ...whole, ...(question?.pieces ?? []));
  return whole.length > 0 ? [] : rest;
}
