// A yes, a no or free words to a question of history.

import type { Piece } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { answeredTopic } from '../history/history.ts';
import { isChatter } from '../light.ts';
import { bear, note, place, state, type Talk, textOf } from '../talk.ts';
import type { AnswerWord } from './answer-word.ts';
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
  const free = rest.every(isChatter) ? null : answeredTopic(talk, asked.topic, to, end);
  if (free !== null && !rest.some((piece) => piece.role === 'history')) {
    state(talk, [{ statement: free.statement, known: free.known, from, to: end }]);
    place(talk, { from, to: end });
    return [];
  }
  if (word === 'no') {
    const said = textOf(talk, from, to);
    const text = asked.item === undefined ? said : `${asked.item}: ${said}`;
    const statement = { kind: 'history', topic: asked.topic, text, present: false } as const;
    state(talk, [{ statement, known: { topic: 'carried' }, from, to }]);
  }
  // "Yes" alone to a question of history waits for what it is.
  else if (rest.length === 0) bear(talk, { asked: { ...asked } });
  return rest;
}
