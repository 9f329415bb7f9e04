// "Bruise on the left shin." "No, that's just mud": what was found is explained by something else in words that nobody knows; it stands, and
// is asked about.

import type { Clause } from '../../clauses/clause.ts';
import type { Role } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { note, type Talk, textOf } from '../talk.ts';
import { change } from './correction.ts';
import { sameTarget } from './target.ts';

const OTHER: ReadonlySet<Role> = new Set([
  'unknown',
  'small',
  'talk',
  'answer',
  'correction',
  'asking',
  'negation',
  'attribute',
  // "No, that's his wife."
  'mood',
]);
const OPENS =
  /^(oh |well |hmm |no |nope |wait |actually |sorry |hang on |hold on |ah )+((that|it) (is|was)|(just|only)) /;
const MOST_WORDS = 9;

/** Asks about what was said last where a clause explains it away; false where it does not. */
export function explainsAway(talk: Talk, { pieces, mood }: Clause): boolean {
  if (mood !== 'statement' && mood !== 'answer' && mood !== 'correction' && mood !== 'others') return false;
  const { asked, said, isSaidLast } = talk.context;
  if (!isSaidLast || asked !== null || said.length === 0) return false;
  const { from, to } = spanned(pieces);
  const words = talk.tokens.slice(from, to).map(({ word }) => word);
  if (words.length > MOST_WORDS || !OPENS.test(words.join(' '))) return false;
  if (
    !pieces.every(({ role }) => OTHER.has(role)) ||
    !pieces.some(({ role }) => role === 'unknown' || role === 'mood')
  )
    return false;
  const found = said.filter(
    (one) =>
      (one.kind === 'finding' && one.present) ||
      one.kind === 'vital' ||
      (one.kind === 'history' && one.present !== false),
  );
  if (found.length < said.length) return false;
  const doubt = [`Taken back by “${textOf(talk, from, to)}”: is it there?`];
  change(
    talk,
    found.map((statement) => ({
      change: { change: 'statement', statement },
      target: sameTarget(statement),
      basis: { statement, known: {}, doubt },
    })),
    { from, to },
  );
  note(talk, { from, to });
  return true;
}
