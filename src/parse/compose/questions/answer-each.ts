// "Neck pain? Back pain?" "No and no": as many answers as questions, each to its own.

import type { Clause } from '../../clauses/clause.ts';
import { isSmall, type Piece } from '../../pieces/piece.ts';
import { bear, place, type Talk } from '../talk.ts';
import { answerFindings } from './answer-findings.ts';
import { wordOf } from './answer-word.ts';
import { settledOf } from './settle.ts';

/** Settles each question of the utterance by its own answer; false where their numbers differ or more was said. */
export function answerEach(talk: Talk, clause: Clause): boolean {
  const { questions } = talk;
  const answers = clause.pieces.filter((piece) => wordOf(piece) !== null);
  const plain = clause.pieces.every((piece) => answers.includes(piece) || isSmall(piece, 'join'));
  if (!plain || questions.length < 2 || answers.length !== questions.length) return false;
  bear(talk, { asked: null });
  place(talk, ...clause.pieces);
  const asking = talk.asking;
  questions.forEach((asked, i) => {
    const piece = answers[i] as Piece;
    const word = wordOf(piece) ?? 'unsure';
    if (word !== 'unsure')
      answerFindings(talk, asked, { word, severity: null, explicit: false, mixed: false, span: piece }, []);
  });
  // What one of them leaves unsettled was looked at all the same.
  talk.asking = settledOf(talk, asking);
  return true;
}
