// "Is it the left ankle that hurts?" "No, it's the right.": the side that was asked after is denied, and the other one has it.

import type { Clause } from '../../clauses/clause.ts';
import type { SiteRef } from '../../context.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { pauseAfter, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { itemsOf } from '../exam/items.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { phrasesIn } from '../sites/item.ts';
import { otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import { bear, place, type Said, type Talk } from '../talk.ts';
import { type AskedFindings, settle } from './settle.ts';

const SAID: ReadonlySet<Role> = new Set(['side', 'site', 'small', 'talk', 'answer', 'correction', 'asking']);

/** Takes a clause that names nothing but the other side for the answer; false where it says more or else. */
export function answersOtherSide(talk: Talk, { pieces }: Clause, asked: AskedFindings): boolean {
  const [site, ...others] = asked.sites;
  const side = otherSide(site?.side ?? null);
  if (site === undefined || others.length > 0 || (side !== 'left' && side !== 'right')) return false;
  if (asked.negative || asked.findings.length !== 1 || asked.findings.some(({ present }) => !present))
    return false;
  if (
    !pieces.every((piece) => SAID.has(piece.role) || isSmall(piece, 'person')) ||
    !names(talk, pieces, site, side)
  )
    return false;
  const words = talk.tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).map(({ word }) => word);
  const denies = NO.test(words.join(' '));
  // "No, right hip?" asks on.
  if (pauseAfter(talk.tokens, spanned(pieces)) === 'ask') return false;
  // "Right side next" goes on to the other one.
  if (!denies && !IT_IS.test(words.join(' '))) return false;
  // "Tell me if it hurts." "Left knee." "No, other knee.": the next one is looked at.
  if (asked.standing === true && !OWN.test(words.join(' '))) return false;
  if (
    pieces.some((piece) => isSmall(piece, 'turn') || isSmall(piece, 'join') || marked(piece, 'answer', 'yes'))
  )
    return false;
  const of = (ref: SiteRef, present: boolean): readonly Said[] =>
    asked.findings.map(({ finding, quality }) => ({
      statement: findingStatement(finding, ref, present, present ? { quality } : {}),
      known: { site: 'carried', finding: 'carried', present: 'inferred' } as const,
      ...spanned(pieces),
    }));
  const other: SiteRef = { ...site, side, sideKnown: 'spoken' };
  bear(talk, { asked: null, sites: [other] });
  settle(talk, [...(denies ? of(site, false) : []), ...of(other, true)]);
  place(talk, ...pieces);
  return true;
}

const NO = /^(oh |well |um )*(no|nope|nah)\b/;
const OWN = /\b(it is|that is|my)\b/;
const OTHER = /\b(the|my) (other|opposite) (one|side)$/;
const IT_IS = /^(oh |well )*(it is|that is|it was) /;

/** True where the words name that side, of the place that was asked after or of none. */
function names(talk: Talk, pieces: readonly Piece[], { site }: SiteRef, side: 'left' | 'right'): boolean {
  const refs = phrasesIn(itemsOf(talk, pieces)).flatMap(({ sites }) => sites);
  // "No, the other one."
  const isOther = OTHER.test(saidIn(talk.tokens, pieces[0]?.from, pieces.at(-1)?.to));
  const said =
    refs.length > 0 ? refs.map((ref) => ref.side) : [isOther ? side : (sideIn(pieces)?.side ?? null)];
  return refs.every((ref) => ref.site === site) && said.every((one) => one === side);
}
