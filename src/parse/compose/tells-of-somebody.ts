// "Squeeze the calf and the foot doesn't move": in one breath with what is to be done, what is not so; it must not be lost.

import type { Clause } from '../clauses/clause.ts';
import { isSmall, marked } from '../pieces/piece.ts';
import type { Talk } from './talk.ts';

/** True for an instruction that goes on with a denial of the third person which no "if" supposes. */
export function tellsOfSomebody({ tokens }: Talk, { pieces }: Clause): boolean {
  const supposes = pieces.some(
    (piece) => marked(piece, 'conditional') || marked(piece, 'tell-if') || marked(piece, 'mood', 'supposing'),
  );
  if (supposes || pieces.some((piece) => isSmall(piece, 'you'))) return false;
  const words = tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).map(({ word }) => word);
  return DENIES.test(words.join(' ')) && !words.includes('if');
}

const DENIES = /\b(does|is|has|was|did|will) not\b/;
