// Composes an answer: what was asked, said to be so or not; what cannot be settled by it is kept as a note.

import type { Clause } from '../../clauses/clause.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { bear, note, place, type Talk } from '../talk.ts';
import { answerCsm } from './answer-csm.ts';
import { answerFindings } from './answer-findings.ts';
import { answerSides, sidesAnswered } from './answer-sides.ts';
import { answerTopic } from './answer-topic.ts';
import { answerWord } from './answer-word.ts';

/** States what the answer settles. Returns the pieces after it that still have to be read. */
export function answer(talk: Talk, clause: Clause): readonly Piece[] {
  const { asked } = talk.context;
  const bySide = asked?.about === 'findings' ? sidesAnswered(clause) : null;
  if (asked?.about === 'findings' && bySide !== null) {
    answerSides(talk, clause, asked, bySide);
    return [];
  }
  const said = answerWord(clause);
  if (asked === null || said === null) return clause.pieces;
  const { word, heads, severity } = said;
  const rest = clause.pieces.slice(heads.length);
  const span = spanned(heads);
  bear(talk, { asked: null });
  place(talk, ...heads);
  if (asked.about === 'topic') return answerTopic(talk, asked, word, rest, span);
  if (asked.about === 'vital' || word === 'unsure') {
    note(talk, spanned(clause.pieces));
    return [];
  }
  if (asked.about === 'csm') {
    answerCsm(talk, asked, word, span);
    return rest;
  }
  const explicit = heads.some((piece) => marked(piece, 'explicit'));
  return answerFindings(talk, asked, { word, severity, explicit, span }, rest);
}
