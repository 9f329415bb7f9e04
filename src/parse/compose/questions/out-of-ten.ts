// "Pain in my hip." "Out of ten?" "Six.": after talk of pain these few words ask how bad it is.

import type { Clause } from '../../clauses/clause.ts';
import type { Context } from '../../context.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { toldIn } from '../../told.ts';
import { bear, place, type Talk, textOf } from '../talk.ts';

const OF_TEN =
  /^((and|so|then|okay|right|now) )*((what|how) (about|bad|sore|much|is it|is that|would you say) |what |(give me )?a (number|score) |score |scored )?(out of|from one to|zero to|one to) (ten|10)$/;

const NAMED =
  /^((and|so|then|okay|right|now) )*(the|your|his|her) pain( (right now|now|there|my|today))* out of (ten|10)$/;

/** Opens the question after the pain's score; false for other words, and where nobody told of pain. */
export function asksOutOfTen(talk: Talk, { pieces, mood }: Clause): boolean {
  if (mood !== 'statement' && mood !== 'question') return false;
  const { from, to } = spanned(pieces);
  // "And your pain now, my darling, out of ten?"
  const words = pieces
    .filter(({ role }) => role !== 'talk')
    .map((one) => saidIn(talk.tokens, one.from, one.to));
  const said = words.join(' ');
  if (!NAMED.test(said) && !(OF_TEN.test(said) && isOfPain(talk.context))) return false;
  bear(talk, {
    asked: { about: 'vital', vital: 'pain-score' },
    question: textOf(talk, from, to),
    isSaidLast: false,
  });
  place(talk, { from, to });
  return true;
}

// Told only of something that hurts.
const OF_HURT: ReadonlySet<string> = new Set(['radiation', 'quality', 'provocation', 'severity']);

const isOfPain = ({ found, said }: Context): boolean =>
  toldIn(found).some(({ finding, present }) => present && (finding === 'pain' || finding === 'tenderness')) ||
  said.some((one) => one.kind === 'history' && OF_HURT.has(one.topic));
