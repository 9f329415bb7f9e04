// What a word does to the open questions between entries: reads one aloud, settles it, strikes what was misheard, or asks which.

import type { Conflict } from '../../clinical/index.ts';
import type { Command } from '../../parse/index.ts';
import { strike } from '../desk/index.ts';
import { nameOf } from '../entries/settled.ts';
import { sendTo } from '../frame/send-to.ts';
import type { Tools } from '../frame/tools.ts';
import { aloud, entryAloud } from './echo.ts';
import {
  entriesAtOdds,
  questionAfter,
  questionAloud,
  questionMeant,
  severalAloud,
  waysToAnswer,
} from './question-meant.ts';
import { tell } from './tell.ts';

/** Of the entries at odds, which one the word names; null where it names none, as there is but one. */
const MISHEARD: Readonly<Partial<Record<Command, number | null>>> = {
  misheard: null,
  'misheard-first': 0,
  'misheard-second': 1,
  'misheard-third': 2,
};

/** True where the word was for the questions, and was answered. `heard`: the word as said, for the log. */
export function answerQuestion(tools: Tools, command: Command, heard: string): boolean {
  switch (command) {
    case 'question-next':
      next(tools);
      return true;
    case 'question-again':
      askAgain(tools);
      return true;
    case 'question-holds':
      withQuestion(tools, (question) => settle(tools, question));
      return true;
  }
  const nth = MISHEARD[command];
  if (nth === undefined) return false;
  withQuestion(tools, (question) => strikeMisheard(tools, question, nth, heard));
  return true;
}

const openQuestions = ({ later, settled }: Tools): readonly Conflict[] =>
  (later.peek()?.worked.reckoning.peek().conflicts ?? []).filter((one) => !settled.isSettled(one));

/** True where a question can be seen just now: not scrolled away, and on a panel that nothing lies over. */
const isOnScreen = ({ sheet, way, changing }: Tools): boolean =>
  isInView(document.querySelector('.questions .question')) &&
  sheet.peek() === null &&
  way.peek() === null &&
  changing.peek() === null;

function isInView(element: Element | null): boolean {
  if (element === null) return false;
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > top && top >= 0 && top < window.innerHeight;
}

/** Does it to the question that is meant; where that is not plain, tells which there are. */
function withQuestion(tools: Tools, act: (question: Conflict) => void): void {
  const open = openQuestions(tools);
  const meant = questionMeant(open, tools.settled.readAloud.peek(), isOnScreen(tools));
  if (meant.kind === 'one') act(meant.question);
  else if (meant.kind === 'unseen') readOut(tools, meant.question);
  else if (meant.kind === 'none') tell(tools, 'No question is open.');
  else {
    show(tools, 'questions-title');
    tell(tools, severalAloud(open));
  }
}

function next(tools: Tools): void {
  const question = questionAfter(openQuestions(tools), tools.settled.readAloud.peek());
  if (question === null) tell(tools, 'No question is open.');
  else readOut(tools, question);
}

/** From now on a word answers this one; the screen has its words, and shows which it is. */
function readOut(tools: Tools, question: Conflict): void {
  const entries = tools.derived.entries.peek();
  tools.settled.readAloud.value = nameOf(question);
  show(tools, 'question-read-aloud');
  tell(tools, questionAloud(question, entries), waysToAnswer(entriesAtOdds(question, entries).length));
}

function show({ sheet, way, changing, panel, queue }: Tools, place: string): void {
  sheet.value = null;
  way.value = null;
  changing.value = null;
  panel.value = 'entries';
  // The panel is drawn first.
  queue.ask({}, () => sendTo(place));
}

/** It settles the question and confirms nothing: sides, negatives and numbers are confirmed one by one. */
function settle(tools: Tools, question: Conflict): void {
  tools.settled.settle(question);
  tell(tools, `Settled, and nothing confirmed: ${aloud(question.question)} “Ask that again” takes it back.`);
}

function askAgain(tools: Tools): void {
  if (!tools.settled.askAgain()) tell(tools, 'No question was settled.');
  else {
    show(tools, 'questions-title');
    tell(tools, 'It is asked again.');
  }
}

function strikeMisheard(tools: Tools, question: Conflict, nth: number | null, heard: string): void {
  const atOdds = entriesAtOdds(question, tools.derived.entries.peek());
  const entry = nth === null ? (atOdds.length === 1 ? atOdds[0] : undefined) : atOdds[nth];
  if (entry === undefined) {
    readOut(tools, question);
    return;
  }
  strike(tools.desk, [entry.id], heard);
  tell(tools, `Struck: ${entryAloud(entry, 'short')}. “Restore that” takes it back.`);
}
