// "Right forearm's got a gash." "The gash is on the left.": the one that was told of is on the other side, which is asked about.

import type { Clause } from '../../clauses/clause.ts';
import { isSmall, type Piece, type Role } from '../../pieces/piece.ts';
import type { Sided } from '../../run.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import { sideAfter } from '../sites/said-side.ts';
import { otherSide } from '../sites/side.ts';
import type { Talk } from '../talk.ts';
import { change } from './correction.ts';
import { isOf, targetOf } from './other-side.ts';
import { findingIn } from './said-anew.ts';

const SAID: ReadonlySet<Role> = new Set(['finding', 'side', 'site', 'small', 'talk', 'correction', 'asking']);
const OPENS = /^((oh|ah|well|and|so|actually|hang on|hold on|wait|no|sorry) )*(the|that|this) /;
const IS_ON = /^(is|was|are|were)( actually| really)?( on| in| over| at)?/;

/** Turns the side of a finding that a clause names again with a "the" and puts on the other side; false for any other clause. */
export function foundOnOther(talk: Talk, { pieces, mood }: Clause): boolean {
  const finding = findingIn(pieces);
  const { asked, run } = talk.context;
  if (mood !== 'statement' || asked !== null || finding === null) return false;
  if (!pieces.every(({ role }) => SAID.has(role)) || !namesAgain(talk, pieces)) return false;
  const told = (run.at(-1) ?? []).find(
    (one) => one.kind === 'finding' && one.present && one.finding === finding,
  );
  if (told === undefined) return false;
  const side = sideSaid(talk, pieces, told);
  if (side === null || side === told.side) return false;
  const basis = { statement: told, known: {}, doubt: ['Was the side of this put right?'] };
  change(talk, [{ change: { change: 'side', side }, target: targetOf(told), basis }], spanned(pieces));
  return true;
}

// "The gash is on": an article, the finding, and where it is.
function namesAgain({ tokens }: Talk, pieces: readonly Piece[]): boolean {
  const at = pieces.findIndex(({ role }) => role === 'finding');
  const [found, link] = [pieces[at], pieces[at + 1]];
  const first = pieces[0];
  if (first === undefined || found === undefined || link === undefined || !isSmall(link, 'link'))
    return false;
  const before = saidIn(tokens, first.from, found.from);
  return OPENS.test(`${before} `) && IS_ON.test(saidIn(tokens, link.from, pieces.at(-1)?.to));
}

function sideSaid(talk: Talk, pieces: readonly Piece[], told: Sided): 'left' | 'right' | null {
  const sides = pieces.filter(({ role }) => role === 'side');
  const [piece] = sides;
  const phrases = phrasesIn(itemsOf(talk, pieces)).flatMap(({ sites }) => sites);
  if (piece === undefined || sides.length > 1 || phrases.some(({ site }) => !isOf(told, site))) return null;
  const said = sideAfter(piece);
  const side = said === 'mirror' ? otherSide(told.side) : said;
  return side === 'left' || side === 'right' ? side : null;
}
