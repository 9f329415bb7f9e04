// A question that may hold its answer, told in the same breath in words that nobody here reads as one: it must not be lost.

import { marked, type Piece, type Role, tagIn } from '../pieces/piece.ts';
import { saidIn, type Token } from '../token.ts';
import { goesOnAsking, isOpenEnd } from './run-on.ts';

/** True where words behind what was asked may answer it, and no question mark follows. */
export const mayHoldAnswer = (pieces: readonly Piece[], tokens: readonly Token[]): boolean =>
  followsHistory(pieces, tokens) || holdsReply(pieces, tokens) || isAnswered(pieces, tokens);

const TOLD: ReadonlySet<Role> = new Set(['unknown', 'figure', 'time', 'history', 'ask', 'attribute', 'care']);

const isNot = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  to - from === 1 && /^(not|never)$/.test(tokens[from]?.word ?? '');

const PERSON = /^(i|he|she|they)$/;
const TIED =
  /^(when|if|where|while|after|before|since|that|what|which|how|because|did|do|does|has|have|had|is|are|was|were|can|and|or)$/;

/**
 * True where an answer was given in the breath of a question, in words that are none by themselves: "did it click I heard a
 * snap", "is it worse when you cough no it's always there", "taken anything for it two aspirin", "does it hurt only when I turn".
 */
function isAnswered(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const [first, ...rest] = pieces;
  const last = pieces.at(-1);
  if (first === undefined || last === undefined || !isOpenEnd(tokens, last.to - 1)) return false;
  return rest.some((piece, k) => {
    const before = pieces[k];
    const [word, lead] = [tokens[piece.from]?.word ?? '', tokens[piece.from - 1]?.word ?? ''];
    if (before === undefined) return false;
    if (marked(piece, 'denies')) return true;
    // "Is your vision blurred only on the left".
    const next = tokens[piece.to]?.word ?? '';
    if (/^(only|just)$/.test(word) && k > 0 && /^(in|on|when|if|after)$/.test(next)) return true;
    // A drug with its amount.
    if (piece.role === 'care') return piece.islands[0]?.slots[0]?.from === piece.from;
    if (piece.role === 'history') return PERSON.test(word) && !TIED.test(lead);
    return (
      piece.role === 'finding' && / (only|just) (when|if) i\b/.test(saidIn(tokens, piece.from, piece.to))
    );
  });
}

/** True where words that may be an answer follow a whole question of history in the same breath, and no question mark. */
function followsHistory(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const at = pieces.findIndex((piece) => tagIn(piece, 'history.ask', 'asks') !== null);
  const ask = pieces[at];
  if (ask === undefined || !isOpenEnd(tokens, ask.to - 1)) return false;
  // "Do you feel dizzy not now."
  return pieces.slice(at + 1).some((piece) => (TOLD.has(piece.role) && !piece.weak) || isNot(piece, tokens));
}

const REPLIES = /^(just|only|mostly|once|twice|nothing|none|never)$/;
// "Does it hurt just below the knee": these go on asking.
const ASKS_ON =
  /^(below|above|behind|under|here|there|when|if|before|after|now|inside|outside|past|on|in|at)$/;
const ASKED: ReadonlySet<Role> = new Set(['ask', 'finding', 'csm', 'history', 'unknown']);

/** True where words that may answer follow what was asked in the same breath: "does your back hurt only down at the bottom". */
function holdsReply(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const asked = pieces.find(({ role, weak }) => ASKED.has(role) && !weak);
  const end = pieces.at(-1)?.to ?? 0;
  if (asked === undefined || !isOpenEnd(tokens, asked.to - 1)) return false;
  const ask = pieces.find((piece) => tagIn(piece, 'history.ask', 'asks') !== null);
  // "What do you take a water pill": what is taken is told in the verb of the question.
  const isWhat = tokens[(pieces[0]?.from ?? 0) - 1]?.word === 'what';
  if (isWhat && asked.role === 'history' && asked.to - asked.from > 1) return true;
  return tokens.slice(asked.to, end).some(({ word }, k) => {
    const next = tokens[asked.to + k + 1]?.word ?? '';
    if (/^(he|she)$/.test(word) && next === 'says') return true;
    // "Does it go anywhere down my arm": whose it is is the patient's own word.
    if (ask !== undefined && word === 'my' && asked.to + k >= ask.to) return true;
    const goesOn = ASKS_ON.test(next) || goesOnAsking(tokens, asked.to + k + 1);
    return REPLIES.test(word) && !(/^(just|only|mostly)$/.test(word) && goesOn);
  });
}
