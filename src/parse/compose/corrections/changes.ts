// What a correction changes: the first of these ways that its words allow, in the order of one list.

import type { Statement } from '../../../terms/index.ts';
import type { Change, CorrectionTarget, StatementFrame } from '../../frame.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { itemsOf } from '../exam/items.ts';
import { attributesOf, joinAttributes } from '../findings/attributes.ts';
import { phrasesIn } from '../sites/item.ts';
import { sideIn } from '../sites/side-in.ts';
import { bear, type Talk } from '../talk.ts';
import { doseAnew } from './dose-anew.ts';
import type { StateAll } from './dry-run.ts';
import { figureNotThat } from './figure-not.ts';
import { hourAnew } from './hour-anew.ts';
import { isTimed } from './late-time.ts';
import { levelsAnew } from './levels-anew.ts';
import { notThat } from './not-that.ts';
import { numberAnew } from './number-anew.ts';
import { placesAnew } from './places-anew.ts';
import { findingIn, presenceIn } from './said-anew.ts';
import { scaleAnew } from './scale-anew.ts';
import { isSaid, siteAnew } from './site-anew.ts';
import { sameTarget } from './target.ts';
import { renamed, retimed } from './told-anew.ts';
import { wholly } from './wholly.ts';
import { wrongSide } from './wrong-side.ts';

export interface Changed {
  readonly change: Change;
  readonly target: CorrectionTarget;
  /** the statement that the correction's own words make */
  readonly basis?: Pick<StatementFrame, 'statement' | 'known' | 'doubt' | 'at'>;
  /** milliseconds since the epoch, where the time is what is corrected */
  readonly at?: number;
  /** it puts nothing right, and is said for the first time */
  readonly isNew?: true;
}

/** The changes of one way, or null where the words do not go that way. */
type Way = (talk: Talk, pieces: readonly Piece[], stateAll: StateAll) => readonly Changed[] | null;

const WAYS: readonly Way[] = [
  wrongSide,
  turned,
  figureNotThat,
  notThat,
  levelsAnew,
  placesAnew,
  scaleAnew,
  wholly,
  time,
  siteAnew,
  side,
  finding,
  attributes,
  presence,
  doseAnew,
  hourAnew,
  numberAnew,
  renamed,
];

/** The changes that these pieces make; null where nothing in them can stand in the place of anything. */
export function changesOf(
  talk: Talk,
  pieces: readonly Piece[],
  stateAll: StateAll,
): readonly Changed[] | null {
  const { sites } = talk.context;
  for (const way of WAYS) {
    const changed = way(talk, pieces, stateAll);
    if (changed !== null) return changed.length > 0 ? changed : null;
    // "Sorry, the other knee": a way that does not go must not turn the side for the next.
    bear(talk, { sites });
  }
  return null;
}

/** "Make the left cheek abrasion the right cheek": the first place is what was said, the second what it should have been. */
export function turned(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const [was, is, ...others] = phrasesIn(itemsOf(talk, pieces)).map(({ sites }) => sites[0]);
  if (was === undefined || is === undefined || others.length > 0 || was.site !== is.site) return null;
  if (was.sideKnown !== 'spoken' || is.sideKnown !== 'spoken' || was.side === is.side) return null;
  // "It's the right one" denies nothing.
  const denies = pieces.some((piece) => marked(piece, 'negation') && !marked(piece, 'negation', 'stop'));
  if (is.side === null || was.side === null || denies) return null;
  const finding = findingIn(pieces);
  // "Left knee fine, right knee swollen" says something of each.
  if (pieces.filter(({ role }) => role === 'finding' || role === 'csm').length > 1) return null;
  const target = {
    ...(finding === null ? {} : { kind: 'finding' as const, finding }),
    site: was.site,
    side: was.side,
  };
  return isSaid(talk, was.site) ? [{ change: { change: 'side', side: is.side }, target }] : null;
}

// "Correction, nine thirty five": the thing stands and its time is another.
function time(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const { times, context } = talk;
  const at = times.at(-1);
  // "Heart rate one twenty, correction one oh two": two numbers without a word that leads to a time are the sign's.
  const isBare = pieces.every((piece) => piece.role !== 'time' || marked(piece, 'ago-only'));
  if (isBare && context.said.at(-1)?.kind === 'vital') return null;
  if (at === undefined || !pieces.every(({ role }) => role === 'time' || role === 'small')) return null;
  // "Male, thirty" has no time that could be put right.
  const doubt = context.isSaidLast
    ? []
    : ['Other words came in between: is that the time that was put right?'];
  return context.said.filter(hasTime).map((statement) => ({
    change: { change: 'statement', statement: retimed(talk, statement, pieces) },
    target: sameTarget(statement),
    basis: { statement, known: {}, doubt },
    at: at.instant,
  }));
}

const hasTime = (statement: Statement): boolean => statement.kind !== 'history' || isTimed(statement);

function side(_talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const said = sideIn(pieces);
  if (said === null) return null;
  const target = said.instead === null ? {} : { side: said.instead };
  return [{ change: { change: 'side', side: said.side }, target }];
}

function finding(_talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const said = findingIn(pieces);
  return said === null ? null : [{ change: { change: 'finding', finding: said }, target: {} }];
}

// "Correction, severe": the finding stands, and what was said of it is another.
function attributes(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const said = pieces.flatMap((piece) => attributesOf(piece) ?? []).reduce(joinAttributes, {});
  const findings = talk.context.said.filter((statement) => statement.kind === 'finding');
  if (Object.keys(said).length === 0 || findings.length === 0) return null;
  return findings.map((one) => {
    const statement = { ...one, ...said };
    return { change: { change: 'statement', statement }, target: sameTarget(statement) };
  });
}

function presence(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const present = presenceIn(pieces);
  if (present === null || talk.context.said.length === 0) return null;
  return [{ change: { change: 'present', present }, target: {} }];
}
