// Who is speaking ("I'm Jo, mountain rescue"): the responder's own name and team are nothing of the patient's.

import type { Clause } from '../clauses/clause.ts';
import { marked, type Piece } from '../pieces/piece.ts';
import { place, type Talk } from './talk.ts';

const MOST_NAMES = 2;

/** Marks the name in an introduction as understood; without the team or the offer of help beside it, it is left alone. */
export function placeIntroduction(talk: Talk, clauses: readonly Clause[]): void {
  if (!clauses.some(({ pieces }) => pieces.some((piece) => marked(piece, 'introduces')))) return;
  for (const { pieces, mood } of clauses) {
    // "If I'm late" introduces nobody.
    if (mood === 'supposing') continue;
    const at = pieces.findIndex((piece) => leads(talk, piece, pieces));
    const [lead] = pieces.slice(at < 0 ? pieces.length : at);
    if (lead === undefined) continue;
    const name: Piece[] = [];
    for (const piece of pieces.slice(at + 1)) {
      if (piece.role !== 'unknown' || name.length === MOST_NAMES) break;
      name.push(piece);
      if (talk.tokens[piece.to - 1]?.pause !== '') break;
    }
    const next = pieces[at + 1 + name.length];
    // "I'm Jo and I was knocked over" goes on to tell something.
    const closes = next === undefined || next.role === 'talk' || talk.tokens[next.from - 1]?.pause !== '';
    const introduces = pieces.some((piece) => piece.to > lead.to && marked(piece, 'introduces'));
    if (name.length > 0 && closes && (introduces || next === undefined)) place(talk, lead, ...name);
  }
}

// "I'm", "my name is", "this is".
const LEAD = /(^| )(i am|we are|my name|my name is|this is)$/;

function leads({ tokens }: Talk, piece: Piece, pieces: readonly Piece[]): boolean {
  const from = pieces[0]?.from ?? piece.from;
  const said = tokens.slice(Math.max(from, piece.to - 3), piece.to).map(({ word }) => word);
  return LEAD.test(said.join(' '));
}
