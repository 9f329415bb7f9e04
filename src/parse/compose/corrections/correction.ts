// Composes a correction: what is put in the place of what was said, and which earlier words it means.

import type { Clause } from '../../clauses/clause.ts';
import { deniedBehindNo } from '../../pieces/denied-behind-no.ts';
import { marked, type Piece, tagIn } from '../../pieces/piece.ts';
import { type Span, spanned } from '../../span.ts';
import { sideAfter } from '../sites/said-side.ts';
import { place, spanOf, state, type Talk, textOf } from '../talk.ts';
import { type Changed, changesOf } from './changes.ts';
import type { StateAll } from './dry-run.ts';
import { ofMeant } from './meant.ts';
import { nthMeant } from './nth-reading.ts';
import { remember } from './remember.ts';

/** Corrects with the words of this clause; false where nothing in it can stand in the place of anything. */
export function correct(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const denial = deniedIn(talk, clause);
  const changes = changesOf(talk, saidAnew(clause, denial === 'denied'), stateAll);
  if (changes === null) return false;
  const meant = ofMeant(talk, changes);
  change(talk, denial === 'unsure' ? meant.map(askedAfter) : meant, spanned(clause.pieces));
  return true;
}

/** Corrects so with the words of this stretch. */
export function change(talk: Talk, changes: readonly Changed[], span: Span): void {
  const [fresh, anew] = [changes.filter(({ isNew }) => isNew), changes.filter(({ isNew }) => !isNew)];
  for (const one of anew) frame(talk, one, span);
  for (const one of anew) remember(talk, one.change, one.target);
  state(
    talk,
    fresh.flatMap(({ basis }) => (basis === undefined ? [] : [{ ...basis, ...span }])),
  );
  place(talk, span);
}

const withoutCorrection = ({ pieces }: Clause): readonly Piece[] =>
  pieces.filter((piece) => piece.role !== 'correction');

function saidAnew(clause: Clause, denies: boolean): readonly Piece[] {
  const said = withoutCorrection(clause);
  const [first, next] = said;
  // "No, the right": the "no" takes back; "correction, no swelling" denies.
  const takesBack =
    first !== undefined && marked(first, 'plain') && next !== undefined && next.role !== 'finding';
  return takesBack && !denies ? said.slice(1) : said;
}

/** Whether a "no" behind the words that take back denies what is named after it: "correction, no chest pain". */
function deniedIn(talk: Talk, clause: Clause): 'denied' | 'unsure' | null {
  const said = withoutCorrection(clause);
  const [first] = said;
  // Without other words "no chest pain" is read as it stands.
  if (said.length === clause.pieces.length || first === undefined || !marked(first, 'plain')) return null;
  const denied = deniedBehindNo(said, 1, talk.tokens);
  if (denied === null) return null;
  return denied.isSided && !isOfSaid(talk, denied.pieces) ? 'unsure' : 'denied';
}

/** True where the last was said of the very side of the very place: to say it anew would put nothing right. */
function isOfSaid({ context }: Talk, pieces: readonly Piece[]): boolean {
  const sides = pieces.flatMap((piece) => (piece.role === 'side' ? (sideAfter(piece) ?? []) : []));
  const sites = pieces.flatMap((piece) =>
    piece.role === 'site' ? (tagIn(piece, 'sites', 'site') ?? []) : [],
  );
  return context.said.some(
    (one) =>
      'side' in one &&
      'site' in one &&
      sides.every((side) => side === one.side || one.side === 'both') &&
      (sites.length === 0 || sites.some((site) => site === one.site)),
  );
}

const askedAfter = (one: Changed): Changed =>
  one.basis === undefined
    ? one
    : {
        ...one,
        basis: { ...one.basis, doubt: [...one.basis.doubt, 'Is it there, or did the “no” deny it?'] },
      };

function frame(talk: Talk, changed: Changed, { from, to }: Span): void {
  const { change, target, basis, at = basis?.at } = changed;
  const nth = nthMeant(talk, changed, { from, to });
  talk.frames.push({
    frame: 'correction',
    target,
    change,
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: basis?.known ?? {},
    doubt: basis?.doubt ?? [],
    ...(at === undefined ? {} : { at }),
    ...(nth === null ? {} : { nth }),
  });
}
