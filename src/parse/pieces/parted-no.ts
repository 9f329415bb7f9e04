// "Sorry, no bruising": where "sorry no" is followed by what it denies, its "no" is no part of the words that take back. "Any allergies no
// any medications no": nor is an answer a part of the next question.

import type { Island } from '../islands/island.ts';
import { saidIn, type Token } from '../token.ts';
import { deniedBehindNo } from './denied-behind-no.ts';
import { marked, type Piece, type Role, tagIn } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such "no" parted from the words before it. */
export const withPartedNo = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some(({ role }) => role === 'correction' || role === 'ask')
    ? pieces.flatMap((piece, i) => {
        if (denies(pieces, i, tokens)) return parted(piece, tokens);
        return asksOn(pieces, i, tokens) ? answeredAndAsked(piece) : [piece];
      })
    : pieces;

// "Any allergies | no any medications | no".
function asksOn(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (before === undefined || piece?.role !== 'history' || next?.role !== 'answer') return false;
  const isAsked = before.role === 'ask' && tokens[before.to - 1]?.pause === '';
  return isAsked && saidIn(tokens, piece.from, piece.from + 2) === 'no any' && marked(piece, 'denied');
}

function answeredAndAsked(piece: Piece): readonly Piece[] {
  const topic = tagIn(piece, 'history', 'topic') ?? '';
  return [
    {
      ...reread(piece, 'answer', 'talk.answer', { answer: 'no', plain: '' }),
      to: piece.from + 1,
      weak: true,
    },
    { ...reread(piece, 'ask', 'history.ask', { asks: topic }), from: piece.from + 1 },
  ];
}

function denies(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece?.role !== 'correction' || piece.to - piece.from < 2 || next === undefined) return false;
  const no = tokens[piece.to - 1];
  // "No no ow" is no denial of a cry.
  const isCry = CRIES.test(tokens[next.from]?.word ?? '');
  if (no?.word !== 'no' || no.pause !== '' || isCry) return false;
  return (DENIED.has(next.role) && !next.weak) || deniedBehindNo(pieces, i + 1, tokens) !== null;
}

const CRIES = /^(ow|oww|ouch|ah|aah|argh|aargh|oof|oh)$/;

const DENIED: ReadonlySet<Role> = new Set(['finding', 'attribute']);

function parted(piece: Piece, tokens: readonly Token[]): readonly Piece[] {
  // "No no swelling": one "no" says nothing else than the other, and takes nothing back.
  if (saidIn(tokens, piece.from, piece.to) === 'no no') return [denying(piece)];
  return [{ ...piece, to: piece.to - 1 }, denying({ ...piece, from: piece.to - 1 })];
}

/** The words as a "no" that answers, or denies what follows it. */
function denying(piece: Piece): Piece {
  const no = { ...piece, weak: true };
  const islands: readonly Island[] = [
    ...reread(no, 'answer', 'talk.answer', { answer: 'no', plain: '' }).islands,
    ...reread(no, 'answer', 'negation.negation', { negation: 'before' }).islands,
  ];
  return { ...no, role: 'answer', islands };
}
