// "Which hip hurts, the left or the right?" "The right one, the left is just cold", "both", "neither", "my right hip": which of those
// that were asked after it is, and what is said behind it.

import type { Side } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { SiteRef } from '../../context.ts';
import { isSmall, marked, type Piece, tagIn } from '../../pieces/piece.ts';
import { isPaused, spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { StateAll } from '../corrections/dry-run.ts';
import { findingStatement } from '../findings/finding-statement.ts';
import { isChatter } from '../light.ts';
import { sideAfter } from '../sites/said-side.ts';
import { wholeSite } from '../sites/site-ref.ts';
import { bear, place, type Talk } from '../talk.ts';
import { noteAnswer } from './note-answer.ts';
import { type AskedFindings, settle } from './settle.ts';

/** Takes the side that opens a clause for the answer to a question that left it open; false where the clause says something else. */
export function answersChoice(
  talk: Talk,
  { pieces }: Clause,
  asked: AskedFindings,
  stateAll: StateAll,
): boolean {
  const [site, ...others] = asked.sites;
  if (!asked.either || asked.negative || site === undefined || others.length > 0) return false;
  if (asked.findings.length > 1 || asked.findings.some(({ present }) => !present)) return false;
  const head = headOf(talk, pieces, (named) => named === site.site);
  const said = head === null ? null : chosenIn(talk, head);
  if (head === null || said === null) return false;
  const rest = pieces.slice(head.length);
  // "No, the right": of which of them that is a no, nobody said.
  if (head.some((piece) => marked(piece, 'answer', 'no') && piece.role !== 'side')) {
    bear(talk, { asked: null });
    noteAnswer(talk, spanned(head));
  } else {
    const ref: SiteRef = { ...wholeSite(site), side: said.side, sideKnown: 'spoken' };
    bear(talk, { asked: null, sites: [ref] });
    settle(
      talk,
      asked.findings.map(({ finding, quality }) => ({
        statement: findingStatement(
          finding,
          { ...site, ...ref },
          !said.denied,
          said.denied ? {} : { quality },
        ),
        known: { site: 'carried', finding: 'carried', present: 'inferred' } as const,
        ...spanned(head),
      })),
    );
  }
  place(talk, ...head);
  if (!rest.every(isChatter)) stateAll(talk, rest);
  return true;
}

/** The pieces up to the side that answers, where nothing is said of that side behind it; null for any other clause. */
export function headOf(
  { tokens }: Talk,
  pieces: readonly Piece[],
  isOfIt: (site: string | null) => boolean,
): readonly Piece[] | null {
  const at = pieces.findIndex(
    (piece, k) => piece.role === 'side' && !isNot(tokens[pieces[k - 1]?.from ?? -1]?.word),
  );
  const named = pieces[at + 1];
  const isNamed = named?.role === 'site' && isOfIt(tagIn(named, 'sites', 'site'));
  const end = at + (isNamed ? 2 : 1);
  if (at < 0 || !pieces.slice(0, at).every((piece) => isLead(piece, tokens[piece.from]?.word ?? '')))
    return null;
  const [last, next] = [pieces[end - 1], pieces[end]];
  if (last === undefined) return null;
  const does = pieces
    .slice(end, end + 1)
    .filter(({ from, to }) => /^(does|did|do)$/.test(saidIn(tokens, from, to)));
  const past = pieces[end + does.length];
  const isWhole =
    past === undefined ||
    isPaused(tokens, does[0] ?? last) ||
    past.role === 'side' ||
    past.role === 'talk' ||
    isSmall(past, 'person') ||
    isSmall(past, 'mine') ||
    // "The left one I twisted it on the ice": a sentence of its own.
    (past.role === 'history' && SUBJECT.test(tokens[past.from]?.word ?? ''));
  // "The right thigh", "left is sore": another place, or something of its own.
  return isWhole && next?.role !== 'site' ? pieces.slice(0, end + does.length) : null;
}

const SUBJECT = /^(i|we|he|she|they|it)$/;

const isNot = (word: string | undefined): boolean => word === 'not';

const isLead = (piece: Piece, word: string): boolean =>
  piece.role === 'small' ||
  piece.role === 'talk' ||
  piece.role === 'answer' ||
  piece.role === 'side' ||
  isNot(word) ||
  marked(piece, 'guess') ||
  marked(piece, 'negation', 'stop');

export interface Chosen {
  readonly side: Side;
  readonly denied: boolean;
}

/** The side that these pieces end on, and whether it is denied of both. */
export function chosenIn({ tokens }: Talk, head: readonly Piece[]): Chosen | null {
  const piece = head.findLast(({ role }) => role === 'side');
  const side = piece === undefined ? null : sideAfter(piece);
  if (
    piece === undefined ||
    side === null ||
    side === 'mirror' ||
    side === 'midline' ||
    marked(piece, 'choice')
  )
    return null;
  return { side, denied: tokens[piece.from]?.word === 'neither' };
}
