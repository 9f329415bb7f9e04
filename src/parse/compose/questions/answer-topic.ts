// A yes, a no or free words to a question of history.

import type { HistoryStatement } from '../../../terms/index.ts';
import { isLikely, isSmall, type Piece, type Role, readingOf } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { answeredTopic } from '../history/history.ts';
import { isChatter } from '../light.ts';
import { isJoin } from '../sayings/index.ts';
import { bear, note, place, state, type Talk, textOf } from '../talk.ts';
import type { AnswerWord } from './answer-word.ts';
import { noteAnswer } from './note-answer.ts';
import type { AskedTopic } from './settle.ts';

/** States what the answer says of the topic; returns the pieces after it that still have to be read. */
export function answerTopic(
  talk: Talk,
  asked: AskedTopic,
  word: AnswerWord,
  rest: readonly Piece[],
  { from, to }: Span,
): readonly Piece[] {
  const end = rest.at(-1)?.to ?? to;
  if (word === 'unsure') {
    note(talk, { from, to: end });
    return [];
  }
  // "You're not allergic to anything, are you?" "Yes": whether that is so nobody can tell.
  if (word === 'yes' && isAskedInNegative(asked) && rest.every(isChatter)) {
    noteAnswer(talk, { from, to });
    return [];
  }
  // "No sir, nothing", "no, none at all": it is denied, and no more than that.
  if (word === 'no' && rest.every((piece) => isChatter(piece) || isNothing(talk, piece))) {
    deny(talk, asked, { from, to: rest.some((piece) => isNothing(talk, piece)) ? end : to });
    place(talk, ...rest);
    return [];
  }
  // "No okay you're boring": who asked goes on, and the "no" has had its say.
  const past = word === 'no' && asked.item === undefined ? pastCourtesy(talk, rest) : rest;
  if (past.length < rest.length && !past.some((piece) => piece.role === 'history')) {
    deny(talk, asked, { from, to });
    return past;
  }
  // "None whatsoever, I could eat anything": what follows takes nothing of it back.
  if (word === 'no' && deniesAll(talk, { from, to }) && isAside(talk, rest)) {
    deny(talk, asked, { from, to: end });
    place(talk, ...rest);
    return [];
  }
  const start = startOfAnswer(talk, from, to);
  // "What makes it worse?" "When I move."
  if (rest.length === 0 && asked.item === undefined && start === from && word === 'yes') {
    state(talk, [{ statement: told(asked, textOf(talk, from, to)), known: { topic: 'carried' }, from, to }]);
    return [];
  }
  // "No, but" leads on to another question.
  const free = rest.every((piece) => isChatter(piece) || isJoin(piece))
    ? null
    : answeredTopic(talk, asked.topic, start, end);
  if (free !== null && !rest.some((piece) => piece.role === 'history')) {
    // "Did you black out?" "No, I recall it all": the one is denied, and the other told.
    if (word === 'no' && asked.item !== undefined) deny(talk, asked, { from, to });
    // "Did you black out?" "Yeah, for a bit": the answer alone would not say what of.
    const isOf = word === 'yes' && asked.item !== undefined;
    // "Does it go anywhere?" "Nope, stays right there": it does not, in the patient's words.
    const stays = word === 'no' && asked.topic === 'radiation' && STAYS.test(talk.tokens[to]?.word ?? '');
    // "No, I love cats": without its "no" the text would say the opposite.
    const turns = word === 'no' && asked.item === undefined && SUBJECT.test(talk.tokens[to]?.word ?? '');
    const statement: HistoryStatement = stays
      ? { ...told(asked, textOf(talk, from, end)), present: false }
      : isOf || turns
        ? told(asked, textOf(talk, from, end))
        : free.statement;
    state(talk, [{ statement, known: free.known, from, to: end }]);
    place(talk, { from, to: end });
    return [];
  }
  // "No, nothing eases it": what is told of the same says it.
  const isTold = asked.item === undefined && rest.some((piece) => isLikely(piece, 'topic', asked.topic));
  if (word === 'no') {
    if (!isTold) deny(talk, asked, { from, to });
  } else if (asked.item !== undefined && rest.length > 0) return affirm(talk, asked, rest, { from, to });
  // "Yes" alone to a question of history waits for what it is; "asthma?" "yes" has said it.
  else if (rest.length === 0) {
    if (asked.item !== undefined)
      state(talk, [
        { statement: told(asked, textOf(talk, from, to)), known: { topic: 'carried' }, from, to },
      ]);
    // What there is may come yet, or never: that there is something is kept.
    else if (isLast(talk, to) || isAskedOn(talk, to)) noteAnswer(talk, { from, to });
    bear(talk, { asked: { ...asked } });
  }
  return rest;
}

// "Okay", "lovely", with nothing of the patient's behind it.
function pastCourtesy(talk: Talk, rest: readonly Piece[]): readonly Piece[] {
  const [first] = rest;
  if (first === undefined || readingOf(first, 'talk.courtesy') === null) return rest;
  const end = rest.findIndex((piece) => readingOf(piece, 'talk.courtesy') === null);
  place(talk, ...(end < 0 ? rest : rest.slice(0, end)));
  return end < 0 ? [] : rest.slice(end);
}

const isAskedInNegative = ({ item = '' }: AskedTopic): boolean =>
  /(^|\b)(no|not|never|nothing)\b|n['’]t\b/i.test(item);

const isNothing = ({ tokens }: Talk, { from, to }: Piece): boolean =>
  /^(nothing|none|no|nope|never|nothing at all|none at all|not at all|nothing like that|nothing else)$/.test(
    saidIn(tokens, from, to),
  );

// "What makes it worse?" "When I cough hard": when it is so belongs to the answer, and so does a "nothing" that is told of.
const startOfAnswer = (talk: Talk, from: number, to: number): number =>
  /^(when|if|only|just)$/.test(talk.tokens[from]?.word ?? '') ? from : isSubject(talk, to) ? to - 1 : to;

const deniesAll = ({ tokens }: Talk, { from, to }: Span): boolean =>
  /\b(at all|whatsoever)$/.test(saidIn(tokens, from, to));

// A sentence of the patient's own, with nothing that excepts or tells of more.
const isAside = ({ tokens }: Talk, rest: readonly Piece[]): boolean => {
  const said = saidIn(tokens, rest[0]?.from ?? 0, rest.at(-1)?.to ?? 0);
  return (
    SUBJECT.test(tokens[rest[0]?.from ?? -1]?.word ?? '') &&
    !EXCEPTS.test(said) &&
    rest.every((piece) => isChatter(piece) || piece.role === 'unknown' || isSmall(piece, 'article'))
  );
};

const EXCEPTS =
  /\b(but|not|never|except|only|just|apart|though|although|unless|besides|once|get|gets|got|take|takes|took|have|had|use)\b/;

const SUBJECT = /^(i|we|he|she|it|that|they|my)$/;
const STAYS = /^(stays?|staying|only|just|it|right|all)$/;

const OF_ANSWER: ReadonlySet<Role> = new Set([
  'small',
  'unknown',
  'time',
  'figure',
  'care',
  'attribute',
  'talk',
]);

// "Did you hit your head?" "Yeah, on the ice, but I never passed out": the yes reaches to what is told next.
function affirm(talk: Talk, asked: AskedTopic, rest: readonly Piece[], { from, to }: Span): readonly Piece[] {
  const next = rest.findIndex(({ role }) => role === 'history');
  const own = rest.slice(0, next).filter(({ role }) => role !== 'negation');
  const isPlain = next >= 0 && own.every(({ role }) => OF_ANSWER.has(role));
  const end = isPlain ? (own.at(-1)?.to ?? to) : to;
  const known = { topic: 'carried' } as const;
  state(talk, [{ statement: told(asked, textOf(talk, from, end)), known, from, to: end }]);
  place(talk, { from, to: end });
  return rest.filter((piece) => piece.from >= end);
}

// "No, nothing helps": the "nothing" is what is told of, and without it the answer says the opposite.
const isSubject = ({ tokens }: Talk, to: number): boolean =>
  /^(nothing|none)$/.test(tokens[to - 1]?.word ?? '') && tokens[to - 1]?.pause === '';

const isLast = ({ clauses }: Talk, to: number): boolean =>
  clauses.every(({ pieces }) => (pieces.at(-1)?.to ?? 0) <= to || pieces.every(isChatter));

// "Do you remember it?" "Yes." "Hit your head?": another question follows before anything was told.
const isAskedOn = ({ clauses }: Talk, to: number): boolean =>
  clauses.find(({ pieces }) => (pieces[0]?.from ?? 0) >= to)?.mood === 'question';

/** What was answered, behind what was asked where that was one thing. */
export const told = ({ topic, item }: AskedTopic, said: string): HistoryStatement => ({
  kind: 'history',
  topic,
  text: item === undefined ? said : `${item}: ${said}`,
});

function deny(talk: Talk, asked: AskedTopic, { from, to }: Span): void {
  const statement = { ...told(asked, textOf(talk, from, to)), present: false } as const;
  state(talk, [{ statement, known: { topic: 'carried' }, from, to }]);
}
