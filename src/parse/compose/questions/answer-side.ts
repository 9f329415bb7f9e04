// "My arm hurts." "On the left?" "Yeah": the side that was asked after is that of what was said without one.

import type { AskedOne } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import type { Span } from '../../span.ts';
import { remember } from '../corrections/remember.ts';
import { sideIn } from '../sites/side-in.ts';
import { place, spanOf, type Talk, textOf } from '../talk.ts';
import type { AnswerWord } from './answer-word.ts';
import { noteAnswer } from './note-answer.ts';

type AskedSide = Extract<AskedOne, { readonly about: 'side' }>;

/** Puts the side to what was said; a "no" is kept beside its question, since it does not say that it is the other. */
export function answerSide(
  talk: Talk,
  { side }: AskedSide,
  word: AnswerWord,
  { from, to }: Span,
  rest: readonly Piece[],
): readonly Piece[] {
  const other = word === 'no' ? (sideIn(rest)?.side ?? null) : null;
  if (word !== 'yes' && other === null) {
    noteAnswer(talk, { from, to });
    return rest;
  }
  place(talk, ...rest.filter(({ role }) => role === 'side'));
  const change = { change: 'side', side: other ?? side } as const;
  talk.frames.push({
    frame: 'correction',
    target: {},
    change,
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: other === null ? { side: 'carried' } : {},
    doubt: [],
  });
  remember(talk, change, {});
  return rest.filter(({ role }) => role !== 'side');
}
