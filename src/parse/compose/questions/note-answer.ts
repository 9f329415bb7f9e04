// Keeps an answer that settles nothing beside the words of its question.

import type { Span } from '../../span.ts';
import { bear, state, type Talk, textOf } from '../talk.ts';

/** Notes "did you hit your head: no"; where the question is not in mind, the answer alone. */
export function noteAnswer(talk: Talk, { from, to }: Span): void {
  const answer = textOf(talk, from, to);
  const { question } = talk.context;
  const text = question === null ? answer : `${question}: ${answer}`;
  state(talk, [{ statement: { kind: 'note', text }, from, to }]);
  bear(talk, { question: null });
}
