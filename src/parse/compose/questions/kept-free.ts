// Answers that settle nothing, and are kept beside their question: "the big one", "only looking down", "I have none left".

import { isPaired } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Asked } from '../../context.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { isLight } from '../light.ts';
import { sideIn } from '../sites/side-in.ts';
import { isAskedWhich } from '../sites/tells-side.ts';
import { bear, place, type Talk } from '../talk.ts';
import { noteAnswer } from './note-answer.ts';

/** True for "only looking down", "can't", "the left": words that settle nothing of what was asked. */
export function answersFreely(
  { tokens, context, clauses }: Talk,
  clause: Clause,
  asked: Asked | null,
): boolean {
  const { pieces } = clause;
  if (asked?.about === 'csm') return true;
  const before = clauses[clauses.indexOf(clause) - 1]?.mood;
  const isAfter = before === 'question' || (before === 'instruction' && context.asking);
  if (context.question === null || (asked === null && !isAfter)) return false;
  const words = tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).map(({ word }) => word);
  return (
    ONLY.test(words.join(' ')) || isCannot(pieces, words) || isSideAlone(pieces) || saysLittle(pieces, words)
  );
}

// "Any pain in your neck?" "I have none left.", "not for me": small words that tell something, and nobody can tell of what.
const saysLittle = (pieces: readonly Piece[], [first = '', ...others]: readonly string[]): boolean =>
  pieces.every((piece) => isLight(piece) || piece.weak) &&
  (pieces.some((piece) => marked(piece, 'answer', 'no') || marked(piece, 'negation', 'before')) ||
    (/^(i|we|it|there|he|she|they)$/.test(first) && others.length > 1));

/** "Which ear can't you hear with?" "The left.": no entry holds it, so it is kept beside its question; that side is spoken of from then on. */
export function answersWhich(talk: Talk, { pieces }: Clause): boolean {
  const side = sideIn(pieces)?.side ?? null;
  const isAlone = pieces.every(
    ({ role }) => role === 'side' || role === 'small' || role === 'talk' || role === 'site',
  );
  if (side === null || !isAlone || talk.context.question === null || !isAskedWhich(talk, pieces))
    return false;
  bear(talk, {
    sites: talk.context.sites.map((ref) =>
      isPaired(ref.site) ? { ...ref, side, sideKnown: 'spoken' as const } : ref,
    ),
  });
  noteAnswer(talk, spanned(pieces));
  place(talk, ...pieces);
  return true;
}

/** "Can he move that hand?" "Only the thumb.": a look at the thumb does not tell that. */
export const isOnlySome = ({ tokens }: Talk, { pieces }: Clause): boolean =>
  /^(only|just)$/.test(tokens[pieces[0]?.from ?? -1]?.word ?? '');

const ONLY =
  /^(only|just|mostly|mainly|sometimes|here|there|right here|right there|after|before|when|not when)\b|^((much|a bit|a lot|a little|slightly|way|no) )?(better|worse|the same|same|different|change)( now)?$/;

const isCannot = (pieces: readonly Piece[], words: readonly string[]): boolean =>
  pieces.every(({ role }) => role === 'small' || role === 'negation') &&
  /^(no )?((he|she|i|they|it) )?(can|could|will|would|does|did) not( (at all|really|quite|now))?$/.test(
    words.join(' '),
  );

const isSideAlone = (pieces: readonly Piece[]): boolean =>
  pieces.some(({ role }) => role === 'side') &&
  pieces.every(({ role }) => role === 'side' || role === 'small');

/** "Which toe am I touching?" "The big one.", "can you move them?" "Barely.": no yes and no no, so it is kept beside its question. */
export function keepFree(talk: Talk, { pieces }: Clause): void {
  if (pieces.every(({ role }) => role === 'talk')) return;
  noteAnswer(talk, spanned(pieces));
  place(talk, ...pieces);
}
