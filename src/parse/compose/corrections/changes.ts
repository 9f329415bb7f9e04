// What a correction changes: the first of these ways that its words allow, in the order of one list.

import { type FindingStatement, isWithin, type Side, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { Change, CorrectionTarget, StatementFrame } from '../../frame.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { itemsOf } from '../exam/items.ts';
import { attributesOf, joinAttributes } from '../findings/attributes.ts';
import { hasRole, isSmallItem, phraseOf, phrasesIn } from '../sites/item.ts';
import { otherSide } from '../sites/side.ts';
import { sideIn } from '../sites/side-in.ts';
import { bear, type Talk } from '../talk.ts';
import { doseAnew } from './dose-anew.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { figureNotThat } from './figure-not.ts';
import { levelsAnew } from './levels-anew.ts';
import { notThat } from './not-that.ts';
import { numberAnew } from './number-anew.ts';
import { othersTakenBack } from './only-one.ts';
import { placesAnew } from './places-anew.ts';
import { findingIn, presenceIn } from './said-anew.ts';
import { toldOnce } from './same-thing.ts';
import { scaleAnew } from './scale-anew.ts';
import { movedHere, renamedBy, sameTarget, targetOf } from './target.ts';
import { renamed, retimed } from './told-anew.ts';
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
  site,
  side,
  finding,
  attributes,
  presence,
  doseAnew,
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

// "Swelling of the inner ankle, sorry, the outer ankle": the place stands, and the part of it is another.
function partAnew(
  { context }: Talk,
  { site: place, parts, level }: SiteRef,
  turned: Side | null,
): readonly Changed[] | null {
  const [last, ...others] = context.last.filter((one) => one.kind === 'finding');
  if (last === undefined || others.length > 0 || level !== null || parts.length === 0) return null;
  const isSame = last.site === place && (turned === null || turned === last.side);
  if (!isSame || last.part === undefined || parts.every((one) => last.part?.includes(one))) return null;
  const statement: FindingStatement = { ...last, part: parts };
  return [{ change: { change: 'statement', statement }, target: sameTarget(statement) }];
}

const isSaid = ({ context }: Talk, site: Site): boolean =>
  context.found.some((one) => one.startsWith(`${site} `)) ||
  context.said.some((one) => 'site' in one && one.site === site);

function wholly(talk: Talk, pieces: readonly Piece[], stateAll: StateAll): readonly Changed[] | null {
  const statements = toldOnce(wouldSay(talk, pieces, stateAll));
  if (statements.length === 0) return null;
  const { from, to } = spanned(pieces);
  // "Sorry, right knee cut as well": it is there besides.
  const isBesides = ALSO.test(saidIn(talk.tokens, from, to));
  const moved = isBesides ? null : movedHere(talk.context, statements[0]);
  const meant =
    statements.length === 1 || moved !== null ? (renamedBy(talk.context, statements) ?? moved) : null;
  const changed = statements.map(
    (basis, k): Changed => ({
      change: { change: 'statement', statement: basis.statement },
      target: (k === 0 ? meant : null) ?? targetOf(basis),
      basis: k === 0 && meant !== null && meant === moved ? asked(talk, pieces, basis) : basis,
      ...(isOfItsOwn(statements, k) ? { isNew: true } : {}),
    }),
  );
  return [...changed, ...othersTakenBack(talk, pieces, statements)];
}

// "Sorry, right knee cut": whether it is there instead, or besides, only firmer words tell.
function asked(talk: Talk, pieces: readonly Piece[], basis: StatementFrame): StatementFrame {
  const { from, to } = spanned(pieces);
  const clause = talk.clauses.find((one) => one.pieces.some((piece) => pieces.includes(piece)));
  const isFirm = clause?.pieces.some((piece) => marked(piece, 'correct', 'firm')) === true;
  if (isFirm || TOLD_AGAIN.test(saidIn(talk.tokens, from, to))) return basis;
  return {
    ...basis,
    doubt: [...basis.doubt, 'Is it here instead of where it was said to be before, or besides?'],
  };
}

const TOLD_AGAIN = /\b(it|that|this) (is|was)\b|\bthere is the\b/;

const ALSO = /\b(also|too|as well|another|other|both|either|second)\b/;

// "It's the right elbow, and the left elbow has no graze": of the other side it is said for the first time.
const isOfItsOwn = (statements: readonly StatementFrame[], k: number): boolean => {
  const one = statements[k]?.statement;
  return (
    one?.kind === 'finding' &&
    statements
      .slice(0, k)
      .some(
        ({ statement }) =>
          statement.kind === 'finding' &&
          statement.finding === one.finding &&
          statement.site === one.site &&
          statement.present !== one.present &&
          statement.side !== one.side,
      )
  );
};

// "Correction, nine thirty five": the thing stands and its time is another.
function time(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const { times, context } = talk;
  const at = times.at(-1);
  // "Heart rate one twenty, correction one oh two": two numbers without a word that leads to a time are the sign's.
  const isBare = pieces.every((piece) => piece.role !== 'time' || marked(piece, 'ago-only'));
  if (isBare && context.said.at(-1)?.kind === 'vital') return null;
  if (at === undefined || !pieces.every(({ role }) => role === 'time' || role === 'small')) return null;
  return context.said.map((statement) => ({
    change: { change: 'statement', statement: retimed(talk, statement, pieces) },
    target: sameTarget(statement),
    at: at.instant,
  }));
}

function site(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const items = itemsOf(talk, pieces);
  const ref = phraseOf(items.findLast((item) => item.type === 'site'))?.sites[0];
  if (ref === undefined) return null;
  const turned = ref.side ?? sideIn(pieces)?.side ?? null;
  // "The forearm is the left one" turns what was said of the forearm, whatever was said since.
  const part = partAnew(talk, ref, turned);
  if (part !== null) return part;
  const link = items.some((item) => isSmallItem(item, 'link') || hasRole(item, 'asking'));
  if (link && turned !== null && ref.side === null)
    return [{ change: { change: 'side', side: turned }, target: { site: ref.site } }];
  // "It's the right knee, not the left": it means what was said of the knee's other side.
  const instead = sideIn(pieces)?.instead ?? null;
  if (instead !== null && turned !== null && instead !== turned && isSaid(talk, ref.site))
    return [{ change: { change: 'side', side: turned }, target: { site: ref.site, side: instead } }];
  const change: Change = {
    change: 'site',
    site: ref.site,
    ...(turned === null ? {} : { side: turned }),
    ...(ref.level === null ? {} : { level: ref.level }),
  };
  // "Correction, T eleven" means what was said of that part of the spine, whatever was said since.
  // "I said right lower, it was left lower": the first place is what was said, and nothing else is moved.
  const [was, ...others] = phrasesIn(items).flatMap(({ sites }) => sites);
  if (was !== undefined && others.length > 0 && was.site === ref.site && was.side !== ref.side)
    return [{ change, target: { site: was.site, ...(was.side === null ? {} : { side: was.side }) } }];
  const last = talk.context.said.some((one) => 'site' in one && one.site === ref.site);
  // "Right elbow deformity", and after other things "correction, left elbow": only the elbow that was told of can be meant.
  const wrong = ref.sideKnown === 'spoken' && !last ? saidOfOther(talk, ref) : null;
  if (wrong !== null && ref.side !== null)
    return [{ change: { change: 'side', side: ref.side }, target: { site: ref.site, side: wrong } }];
  const inner = turned === null ? null : narrowerThan(talk, ref, turned);
  if (inner !== null && turned !== null) return [{ change: { change: 'side', side: turned }, target: inner }];
  const named = ref.level !== null && !last && isSaid(talk, ref.site);
  return [{ change, target: named ? { site: ref.site } : {} }];
}

// "That's the left arm I'm holding", of a right forearm: the narrower place that was said last stands.
function narrowerThan({ context }: Talk, { site }: SiteRef, turned: Side): CorrectionTarget | null {
  const [one, ...others] = context.said;
  if (one === undefined || others.length > 0 || !('site' in one) || one.site === undefined) return null;
  const was = otherSide(turned);
  const isInner = one.site !== site && isWithin(one.site, site);
  return isInner && was !== null && was !== turned && one.side === was ? { site: one.site, side: was } : null;
}

/** The other side of a place that was told of on that side alone, or null. */
function saidOfOther({ context }: Talk, { site, side }: SiteRef): Side | null {
  const other = otherSide(side);
  const of = (one: Side | null): boolean =>
    context.found.some((told) => told.startsWith(`${site} `) && told.split(' ').includes(one ?? ''));
  return other !== null && of(other) && !of(side) ? other : null;
}

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
