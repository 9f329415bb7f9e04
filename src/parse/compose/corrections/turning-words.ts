// The words that take back what was just said, and what they answer: "oh wait, yes", "actually no", "well, … actually".

import { marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { isChatter } from '../light.ts';
import { wordOf } from '../questions/answer-word.ts';
import type { Talk } from '../talk.ts';

export interface Lead {
  /** what the words say that turn it, or null where they only take back */
  readonly word: 'yes' | 'no' | null;
  readonly rest: readonly Piece[];
  /** where the words end that take it back and answer */
  readonly end: number;
}

const TURNS = /^(actually|wait|mistake|oops|hang|hold)$/;

const SORRY = /\bsorry (no|nope|yes|yeah|yep|he|she|it|there)\b|^(no )?well (yes|yeah|yep|aye|no|it|there)\b/;

/** The words at the start of a clause that take something back, and what they answer; null where it does not begin so. */
export function leadOf({ tokens }: Talk, pieces: readonly Piece[]): Lead | null {
  const open = pieces.findIndex((piece) => !isOfLead(piece));
  const run = open < 0 ? pieces : pieces.slice(0, open);
  // "Actually yeah | when you press there": the small words behind the answer belong to what follows.
  const past = open < 0 ? pieces.length : run.findLastIndex((piece) => !isChatter(piece)) + 1 || run.length;
  const lead = pieces.slice(0, past);
  const behind = pieces.slice(past);
  // "Penicillin, actually": the word may stand behind what it takes back.
  const late = behind.length > 1 && behind.at(-1)?.role === 'correction';
  const rest = late ? behind.slice(0, -1) : behind;
  const last = lead.at(-1);
  if (last === undefined) return null;
  const words = tokens.slice(lead[0]?.from, last.to).map(({ word }) => word);
  // "Yes, sorry, I'll stop" is sorry for the pain.
  const turns =
    late ||
    words.some((word) => TURNS.test(word)) ||
    SORRY.test(words.join(' ')) ||
    (words.at(-1) === 'sorry' && rest.length > 0);
  // "Sorry, no swelling there" denies the swelling and answers nothing; "actually no he can't feel it" denies twice.
  const denies = deniesItself(last, tokens) && rest[0] !== undefined && !isPaused(tokens, last);
  if (denies && rest[0]?.role !== 'csm') return null;
  if (!turns) return null;
  const answer = lead.findLast((piece) => wordOf(piece) !== null || deniesItself(piece, tokens));
  const word = answer === undefined ? null : (wordOf(answer) ?? 'no');
  const end = lead.findLast((piece) => !isChatter(piece))?.to ?? rest[0]?.from ?? last.to;
  return word === 'unsure' ? null : { word, rest, end };
}

const isOfLead = (piece: Piece): boolean =>
  isChatter(piece) || piece.role === 'correction' || piece.role === 'answer' || marked(piece, 'exclaim');

// "Actually no", "no sorry".
const deniesItself = ({ from, to, role }: Piece, tokens: Talk['tokens']): boolean =>
  (role === 'correction' || role === 'answer') &&
  tokens.slice(from, to).some(({ word }) => /^(no|nope|nah|not)$/.test(word));
