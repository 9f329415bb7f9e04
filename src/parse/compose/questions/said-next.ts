// "No and the ankle is swollen", "headache?" "no, neck veins are flat": what is said behind an answer and says something whole is none
// of the answer.

import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { isJoin, openingOf } from '../sayings/index.ts';
import type { Talk } from '../talk.ts';
import { answerWord } from './answer-word.ts';

/** The pieces of the answer and those that go on to something else; null where all of it answers. */
export function saidNext(
  talk: Talk,
  clause: Clause,
): { readonly answer: readonly Piece[]; readonly next: readonly Piece[] } | null {
  const { asked } = talk.context;
  const said = answerWord(clause);
  if (asked === null || said === null) return null;
  const [first, ...others] = clause.pieces.slice(said.heads.length);
  const last = said.heads.at(-1);
  if (first === undefined || last === undefined) return null;
  if (isJoin(first))
    return openingOf(others, talk.tokens) === null ? null : { answer: said.heads, next: others };
  // To a question of history words of the patient's own may follow a "yes".
  const isTold = asked.about === 'topic' && said.word === 'no' && isPaused(talk.tokens, last);
  const opening = isTold ? openingOf([first, ...others], talk.tokens) : null;
  return opening !== null && opening !== 'history' && opening !== 'score'
    ? { answer: said.heads, next: [first, ...others] }
    : null;
}
