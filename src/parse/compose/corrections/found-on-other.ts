// "Right forearm's got a gash." "The gash is on the left.": the one that was told of is on the other side, which is asked about.

import type { Finding } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import type { Sided } from '../../run.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { toldIn } from '../../told.ts';
import { itemsOf } from '../exam/items.ts';
import { sayingsIn } from '../sayings/index.ts';
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

/**
 * Turns the side of a finding that a clause names again with a "the" and puts on the other side; false for any other clause. Behind a
 * "no" nothing is left to ask, and what follows is read by itself: "no, the graze is on the left knee, the right knee has none".
 */
export function foundOnOther(
  talk: Talk,
  clause: Clause,
  read: (talk: Talk, clause: Clause) => void,
): boolean {
  const { mood, pieces: all } = clause;
  if (mood !== 'statement' || talk.context.asked !== null) return false;
  const [lead] = all;
  const isNo = lead !== undefined && marked(lead, 'plain');
  const pieces = isNo ? firstSaying(all.slice(1), talk.tokens) : all;
  const finding = findingIn(pieces);
  if (finding === null || !pieces.every(({ role }) => SAID.has(role)) || !namesAgain(talk, pieces))
    return false;
  const told = isNo ? toldBefore(talk, pieces, finding) : toldLast(talk, finding);
  if (told === undefined) return false;
  const side = sideSaid(talk, pieces, told);
  if (side === null || side === told.side) return false;
  const basis = { statement: told, known: {}, doubt: isNo ? [] : ['Was the side of this put right?'] };
  const span = spanned(isNo ? [lead, ...pieces] : pieces);
  change(talk, [{ change: { change: 'side', side }, target: targetOf(told), basis }], span);
  const rest = all.filter(({ from }) => from >= span.to);
  if (rest.length > 0) read(talk, { ...clause, pieces: rest });
  return true;
}

// "No, the graze is on the left knee | nothing on the right": a pause ends it too.
function firstSaying(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const [first = []] = sayingsIn(pieces, tokens);
  const end = first.findIndex((piece) => isPaused(tokens, piece));
  return end < 0 ? first : first.slice(0, end + 1);
}

const toldLast = ({ context: { run } }: Talk, finding: Finding): Sided | undefined =>
  (run.at(-1) ?? []).find((one) => one.kind === 'finding' && one.present && one.finding === finding);

// What was told last of that finding, at the place that is named or at any, where it is the only one of its kind there.
function toldBefore(talk: Talk, pieces: readonly Piece[], finding: Finding): Sided | undefined {
  const [ref] = phrasesIn(itemsOf(talk, pieces)).flatMap(({ sites }) => sites);
  const told = toldIn(talk.context.found).filter((one) => one.finding === finding && one.present);
  const there = ref === undefined ? told.slice(-1) : told.filter(({ site }) => site === ref.site);
  const sides = new Set(there.map(({ side }) => side));
  const last = there.at(-1);
  if (last === undefined || sides.size > 1) return undefined;
  const { site, side } = last;
  return side === 'left' || side === 'right'
    ? { kind: 'finding', site, side, finding, present: true }
    : undefined;
}

// "The gash is on": an article, the finding, and where it is.
function namesAgain({ tokens }: Talk, pieces: readonly Piece[]): boolean {
  const at = pieces.findIndex(({ role }) => role === 'finding');
  const [found, link] = [pieces[at], pieces[at + 1]];
  const first = pieces[0];
  if (first === undefined || found === undefined || link === undefined) return false;
  const before = saidIn(tokens, first.from, found.from);
  if (!OPENS.test(`${before} `)) return false;
  // "The cut's on the left": the verb is in the word as it was written.
  const noun = tokens[found.to - 1];
  if (noun !== undefined && noun.to - noun.from > noun.word.length) return !isSmall(link, 'link');
  return isSmall(link, 'link') && IS_ON.test(saidIn(tokens, link.from, pieces.at(-1)?.to));
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
