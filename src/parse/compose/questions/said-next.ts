// "No and the ankle is swollen", "headache?" "no, neck veins are flat": what is said behind an answer and says something whole is none
// of the answer.

import type { Clause } from '../../clauses/clause.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { isJoin, openingOf } from '../sayings/index.ts';
import type { Talk } from '../talk.ts';
import { answerWord } from './answer-word.ts';

export interface Parted {
  readonly answer: readonly Piece[];
  readonly next: readonly Piece[];
}

/** The pieces of the answer and those that go on to something else; null where all of it answers. */
export function saidNext(talk: Talk, clause: Clause): Parted | null {
  const { asked } = talk.context;
  const said = answerWord(clause);
  if (asked === null || said === null) return null;
  const [first, ...others] = clause.pieces.slice(said.heads.length);
  const last = said.heads.at(-1);
  if (first === undefined || last === undefined) return null;
  if (isJoin(first))
    return openingOf(others, talk.tokens) === null ? null : { answer: said.heads, next: others };
  if (!isPaused(talk.tokens, last)) return null;
  const rest = [first, ...others];
  // To a question of history words of the patient's own may follow a "yes"; that it hurts may say again what was asked.
  const isTold =
    asked.about === 'topic' ? said.word === 'no' : asked.about !== 'findings' || !hurtsAgain(rest);
  const opening = isTold ? openingOf(rest, talk.tokens) : null;
  return opening !== null && opening !== 'history' && opening !== 'score'
    ? { answer: said.heads, next: rest }
    : null;
}

const hurtsAgain = (rest: readonly Piece[]): boolean => {
  const found = rest.find(({ role }) => role === 'finding');
  return found !== undefined && (marked(found, 'finding', 'pain') || marked(found, 'finding', 'tenderness'));
};

/** "Any allergies?" "Penicillin, the left ankle is fine": the free answer, and what follows it; null where all of it may answer. */
export function toldNext({ tokens }: Talk, pieces: readonly Piece[]): Parted | null {
  for (let k = 1; k < pieces.length; k++) {
    const [before, piece] = [pieces[k - 1], pieces[k]];
    if (before === undefined || piece === undefined) continue;
    const begins = isJoin(piece) ? k + 1 : isPaused(tokens, before) ? k : null;
    if (begins === null || begins >= pieces.length) continue;
    const opening = openingOf(pieces.slice(begins), tokens);
    if (opening === 'place' || opening === 'stated' || opening === 'located' || opening === 'itself')
      return { answer: pieces.slice(0, k), next: pieces.slice(begins) };
  }
  return null;
}
