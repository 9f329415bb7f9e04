// "Left elbow: fine": a word that calls a place normal, as all that follows its name.

import type { Clause } from '../../clauses/clause.ts';
import { isLikely, type Piece, type Role } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { settledOf } from '../questions/settle.ts';
import { place, state, type Talk } from '../talk.ts';

const PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small']);

/** States that the place named just before is free of anything, by these pieces of the clause; false where the clause says more, or may be mere talk. */
export function calledFine(talk: Talk, clause: Clause, pieces: readonly Piece[] = clause.pieces): boolean {
  const before = talk.clauses[talk.clauses.indexOf(clause) - 1];
  const word = pieces.length === 1 ? pieces[0] : undefined;
  if (word === undefined || before === undefined) return false;
  const isAsked = before.mood === 'question' && asksHowItIs(talk, before);
  if (before.mood !== 'statement' && !isAsked) return false;
  const isPlace =
    before.pieces.some(({ role }) => role === 'site') &&
    before.pieces.every(({ role }) => PLACE.has(role) || (isAsked && ASKING.has(role)));
  // "Head: nothing."
  const isNothing = isLikely(word, 'nothing') && before.pause === 'dash';
  if (!isPlace || !(callsNormal(word) || isNothing) || !isLikely(word, 'finding', 'abnormality'))
    return false;
  // After a full stop an "okay" or a "good" may go on to something else.
  if (!isAsked && before.pause !== 'dash' && !SURE.has(talk.tokens[word.to - 1]?.word ?? '')) return false;
  const sites = talk.context.sites;
  state(
    talk,
    sites.map((ref) => ({
      statement: findingStatement('abnormality', ref, false, {}),
      known: { site: 'carried', ...(ref.side === null ? {} : { side: 'carried' as const }) },
      ...spanned(pieces),
    })),
  );
  if (isAsked) talk.asking = settledOf(talk, talk.asking);
  place(talk, word);
  return sites.length > 0;
}

const ASKING: ReadonlySet<Role> = new Set(['asking', 'talk']);

// "How's the elbow?", "what about the left knee?": what is asked is how it is, and nothing of what it can do.
function asksHowItIs({ tokens }: Talk, { pieces }: Clause): boolean {
  const asking = pieces.filter(({ role }) => role === 'asking');
  return asking.length > 0 && asking.every(({ from, to }) => HOW.test(saidIn(tokens, from, to)));
}

const HOW = /^(how|what) (is|are|about)( (the|your|his|her|this|that))?$/;

const SURE: ReadonlySet<string> = new Set(['fine', 'normal', 'clear', 'unremarkable']);

/** True for a soft word that calls a place normal: "fine", "okay", "good". */
export const callsNormal = (piece: Piece): boolean =>
  isLikely(piece, 'soft') && isLikely(piece, 'present', 'false');
