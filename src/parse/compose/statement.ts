// Reads a clause that states: an answer without a yes or no, a side turned, or something new.

import { isCutShort } from '../clauses/answers.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Asked } from '../context.ts';
import type { Piece } from '../pieces/piece.ts';
import { marked } from '../pieces/piece.ts';
import { isPaused, spanned } from '../span.ts';
import { saidIn } from '../token.ts';
import { acknowledges } from './acknowledged.ts';
import { correct } from './corrections/correction.ts';
import { figureNotThat } from './corrections/figure-not.ts';
import { lateTime } from './corrections/late-time.ts';
import { namesMeant } from './corrections/meant.ts';
import { turnCount, turnSide, turnSign } from './corrections/no-and-anew.ts';
import { movesWhatWasSaid } from './corrections/not-that.ts';
import { saysOnlyOne } from './corrections/only-one.ts';
import { takeBackOpposites } from './corrections/opposite.ts';
import { tellsAnew } from './corrections/told-anew.ts';
import { tellsWrongSide } from './corrections/wrong-side.ts';
import { calledFine } from './exam/called-fine.ts';
import { answerFreely } from './history/free-answer.ts';
import { isLight } from './light.ts';
import { answer } from './questions/answer.ts';
import { answersChoice } from './questions/answer-choice.ts';
import { answerWithFigure } from './questions/answer-figure.ts';
import { answerFindings } from './questions/answer-findings.ts';
import { answersNotThere } from './questions/answer-not-there.ts';
import { answersOtherSide } from './questions/answer-other-side.ts';
import { answerPlaces } from './questions/answer-places.ts';
import { answersWhereFirst, answersWithSide, answersWithSite } from './questions/answer-site.ts';
import { answersWhichEnd } from './questions/answer-which-end.ts';
import { answerWord } from './questions/answer-word.ts';
import { answersFreely, answersWhich, isOnlySome, keepFree } from './questions/kept-free.ts';
import { toldNext } from './questions/said-next.ts';
import type { AskedFindings } from './questions/settle.ts';
import { isJoin, sayingsIn } from './sayings/index.ts';
import { withoutContrasted } from './sites/not-that-place.ts';
import { tellsSide } from './sites/tells-side.ts';
import { stateAll } from './state-all.ts';
import { bear, place, state, type Talk, textOf } from './talk.ts';

/** Reads a statement in the light of the question that is open. */
export function readStatement(talk: Talk, clause: Clause): void {
  const { asked } = talk.context;
  if (asked === null && lateTime(talk, clause)) return;
  const own = asked?.about === 'topic' ? toldNext(talk, clause.pieces) : null;
  if (own !== null && answerFreely(talk, { ...clause, pieces: own.answer }, stateAll)) {
    stateAll(talk, own.next);
    return;
  }
  if (answerFreely(talk, clause, stateAll) || answerWithFigure(talk, clause)) return;
  if (acknowledges(talk, clause)) return;
  const { question, asking } = talk.context;
  const isWaiting = asked === null && asking && question !== null;
  // "Squeeze my hand." "Yeah, good."
  const isMoved = asked?.about === 'csm' || isWaiting;
  // "I don't see any": a negation alone, in answer to a question.
  const bareNo =
    answerWord(clause) !== null &&
    clause.pieces.every(
      (piece) =>
        (isLight(piece) || (isMoved && piece.weak && marked(piece, 'soft'))) &&
        !isCutShort(piece, talk.tokens),
    );
  if (bareNo && (asked?.about === 'findings' || asked?.about === 'csm' || isWaiting)) {
    answer(talk, clause);
    return;
  }
  const sameAsked = asked ?? askedHere(talk, clause);
  if (sameAsked?.about === 'findings' && answerPlaces(talk, clause, sameAsked, stateAll)) return;
  if (asked?.about === 'findings' && answersChoice(talk, clause, asked, stateAll)) return;
  if (asked?.about === 'csm' && answersWhichEnd(talk, clause, asked, stateAll)) return;
  if (asked?.about === 'findings' && answersOtherSide(talk, clause, asked)) return;
  if (asked?.about === 'findings' && answersNotThere(talk, clause, asked)) return;
  if (asked?.about === 'findings' && answersWithSite(talk, clause, asked)) return;
  if (asked?.about === 'findings' && answersWhereFirst(talk, clause, asked, stateAll)) return;
  if (asked?.about === 'findings' && answersWithSide(talk, clause, asked)) return;
  if (asked?.about === 'findings' && saysHowMuch(talk, clause, asked)) return;
  // "No, the left": a "no" that answers nothing and turns only the side takes back the last one.
  if (asked === null && (turnSide(talk, clause, stateAll) || turnSign(talk, clause, stateAll))) return;
  if (asked === null && turnCount(talk, clause, stateAll)) return;
  if (asked === null && saysOnlyOne(talk, clause, stateAll) && correct(talk, clause, stateAll)) return;
  if (asked === null && tellsSide(talk, clause) !== null && correct(talk, clause, stateAll)) return;
  if (
    asked === null &&
    movesWhatWasSaid(talk, withoutNo(talk, clause.pieces)) &&
    correct(talk, clause, stateAll)
  )
    return;
  if (asked === null && tellsWrongSide(talk, clause.pieces) && correct(talk, clause, stateAll)) return;
  if (asked === null && tellsAnew(talk, clause, stateAll) && correct(talk, clause, stateAll)) return;
  if (asked === null && figureNotThat(talk, clause.pieces) !== null && correct(talk, clause, stateAll))
    return;
  if (asked === null && (namesMeant(talk, clause, stateAll) || answersWhich(talk, clause))) return;
  const before = talk.frames.length;
  const { said } = talk.context;
  const head = fineHead(talk, clause);
  const rest = withoutContrasted(clause.pieces.slice(head), talk.tokens);
  for (const pieces of sayingsIn(rest, talk.tokens))
    if (!calledFine(talk, clause, pieces)) stateAll(talk, pieces);
  const stated = talk.frames
    .slice(before)
    .some((frame) => frame.frame === 'statement' && frame.statement.kind !== 'visit');
  takeBackOpposites(talk, clause, before, said);
  if (stated) {
    tellWhole(talk, clause, asked, before);
    bear(talk, { asked: null });
  } else if (
    (talk.frames.length === before || isOnlySome(talk, clause)) &&
    answersFreely(talk, clause, asked)
  )
    keepFree(talk, clause);
}

const MUCH =
  /^(yes |oh |it is )*(very|extremely|really|terribly|awfully|so)( much| much so| sore| bad| badly)?( so)?$/;

// "Left wrist, is that sore?" "Very.": a yes, and how bad.
function saysHowMuch(talk: Talk, { pieces }: Clause, asked: AskedFindings): boolean {
  const { from, to } = spanned(pieces);
  if (!MUCH.test(saidIn(talk.tokens, from, to)) || asked.findings.some(({ present }) => !present))
    return false;
  bear(talk, { asked: null });
  answerFindings(
    talk,
    asked,
    { word: 'yes', severity: 'severe', explicit: true, mixed: false, span: { from, to } },
    [],
  );
  place(talk, ...pieces);
  return true;
}

const WHOLE: ReadonlySet<string> = new Set(['chief-complaint', 'events']);

// "What's troubling you most?" "My left wrist hurts.": what is found there is also what was asked after, in the patient's words.
function tellWhole(talk: Talk, { pieces }: Clause, asked: Asked | null, before: number): void {
  if (asked?.about !== 'topic' || asked.item !== undefined || !WHOLE.has(asked.topic)) return;
  const felt = talk.frames
    .slice(before)
    .some(
      (frame) =>
        frame.frame === 'statement' &&
        ((frame.statement.kind === 'finding' && frame.statement.present) ||
          (frame.statement.kind === 'history' && frame.statement.topic === 'symptoms')),
    );
  const { from, to } = spanned(pieces);
  const text = textOf(talk, from, to);
  if (!felt) return;
  state(talk, [
    { statement: { kind: 'history', topic: asked.topic, text }, known: { topic: 'carried' }, from, to },
  ]);
  place(talk, { from, to });
}

// "Left hip: nothing, and the knee is sore": past a pause or an "and" the word that calls the place so has had its say. Gives how many
// pieces were read.
function fineHead(talk: Talk, clause: Clause): number {
  const [word, next] = clause.pieces;
  if (word === undefined || next === undefined) return 0;
  if (!isPaused(talk.tokens, word) && !isJoin(next)) return 0;
  if (!calledFine(talk, clause, [word])) return 0;
  return isJoin(next) ? 2 : 1;
}

// "Any tenderness? Neck, no. Back, no.": the question of the same utterance goes on.
const askedHere = ({ clauses, context }: Talk, clause: Clause): Asked | null =>
  clauses.slice(0, clauses.indexOf(clause)).some(({ mood }) => mood === 'question')
    ? context.askedBefore
    : null;

// "No, the bruise is on the thigh, not the shin": the first "no" stands by itself.
const withoutNo = ({ tokens }: Talk, pieces: readonly Piece[]): readonly Piece[] => {
  const [first, ...rest] = pieces;
  return first !== undefined && marked(first, 'plain') && isPaused(tokens, first) ? rest : pieces;
};

/** Reads an answer, and what is said after it. */
export function readAnswer(talk: Talk, clause: Clause): void {
  const { asked } = talk.context;
  if (answerWithFigure(talk, clause)) return;
  if (asked?.about === 'findings' && answersChoice(talk, clause, asked, stateAll)) return;
  if (asked?.about === 'csm' && answersWhichEnd(talk, clause, asked, stateAll)) return;
  if (asked?.about === 'findings' && answersOtherSide(talk, clause, asked)) return;
  if (asked?.about === 'findings' && answersNotThere(talk, clause, asked)) return;
  if (asked?.about === 'findings' && answerPlaces(talk, clause, asked, stateAll)) return;
  const rest = answer(talk, clause);
  if (asked === null && turnSide(talk, clause, stateAll)) return;
  if (rest.length > 0) stateAll(talk, rest);
  if (asked?.about === 'findings' && talk.context.asked === null) talk.asking = [];
}
