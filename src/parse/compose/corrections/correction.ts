// Composes a correction: what is put in the place of what was said, and which earlier words it means.

import type { Clause } from '../../clauses/clause.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { type Span, spanned } from '../../span.ts';
import { place, spanOf, state, type Talk, textOf } from '../talk.ts';
import { type Changed, changesOf } from './changes.ts';
import type { StateAll } from './dry-run.ts';
import { ofMeant } from './meant.ts';
import { remember } from './remember.ts';

/** Corrects with the words of this clause; false where nothing in it can stand in the place of anything. */
export function correct(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const changes = changesOf(talk, saidAnew(clause), stateAll);
  if (changes === null) return false;
  change(talk, ofMeant(talk, changes), spanned(clause.pieces));
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

function saidAnew({ pieces }: Clause): readonly Piece[] {
  const said = pieces.filter((piece) => piece.role !== 'correction');
  const [first, next] = said;
  // "No, the right": the "no" takes back; "correction, no swelling" denies.
  const takesBack =
    first !== undefined && marked(first, 'plain') && next !== undefined && next.role !== 'finding';
  return takesBack ? said.slice(1) : said;
}

function frame(talk: Talk, { change, target, basis, at = basis?.at }: Changed, { from, to }: Span): void {
  talk.frames.push({
    frame: 'correction',
    target,
    change,
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: basis?.known ?? {},
    doubt: basis?.doubt ?? [],
    ...(at === undefined ? {} : { at }),
  });
}
