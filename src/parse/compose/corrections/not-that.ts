// "C five and C six, not C four": where a correction also says which place it was not, what was said there is what is changed.

import type { FindingStatement, Level, Statement } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import type { CorrectionTarget, StatementFrame } from '../../frame.ts';
import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { wasTold } from '../../told.ts';
import { itemsOf } from '../exam/items.ts';
import { phrasesIn } from '../sites/item.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { findingIn } from './said-anew.ts';

/** What a correction says, and the places that it says it was not. */
interface NotThat {
  readonly said: readonly Piece[];
  readonly wrong: readonly SiteRef[];
}

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk']);

const isPlace = ({ role }: Piece): boolean => PLACES.has(role);

const denies = (piece: Piece, tokens: readonly Token[]): boolean =>
  marked(piece, 'negation', 'before') &&
  /^(not|than|of)$/.test(tokens[piece.to - 1]?.word ?? '') &&
  !marked(piece, 'nouns');

/** The clause parted at its "not", where nothing but places follows that, or the first breath alone is denied; else null. */
function parted(talk: Talk, pieces: readonly Piece[]): NotThat | null {
  const { tokens } = talk;
  const k = pieces.findLastIndex((piece) => denies(piece, tokens));
  if (k < 0 || pieces.slice(0, k).some((piece) => denies(piece, tokens))) return null;
  const isFirst = pieces.slice(0, k).every(({ role }) => role === 'small' || role === 'talk');
  const rest = pieces.slice(k + 1);
  const end = isFirst ? rest.findIndex((piece) => isPaused(tokens, piece)) + 1 : rest.length;
  const wrong = rest.slice(0, end);
  const said = isFirst ? rest.slice(end) : pieces.slice(0, k);
  if (said.length === 0 || !wrong.every(isPlace)) return null;
  const refs = refsIn(talk, wrong);
  return refs.length === 0 || refsIn(talk, said).length === 0 ? null : { said, wrong: refs };
}

const refsIn = (talk: Talk, pieces: readonly Piece[]): readonly SiteRef[] =>
  phrasesIn(itemsOf(talk, pieces)).flatMap(({ sites }) => sites);

/** The changes of a correction that says what it was not; null where it does not. */
export function notThat(talk: Talk, pieces: readonly Piece[], stateAll: StateAll): readonly Changed[] | null {
  const both = parted(talk, pieces);
  if (both === null) return null;
  const stated = wouldSay(talk, both.said, stateAll);
  const [{ statement } = { statement: null }] = stated;
  if (stated.some((one) => one.statement.kind !== 'finding')) return null;
  const wrong = both.wrong.map((ref) => wrongPlace(ref, statement));
  return stated.length > 0
    ? inPlaceOf(talk.context.last, stated, wrong)
    : movedTo(talk.context.last, refsIn(talk, both.said), wrong);
}

/** True where a clause says of something told already that its place is another: "the bruise is on the thigh, not the shin". */
export function movesWhatWasSaid(talk: Talk, pieces: readonly Piece[]): boolean {
  const both = parted(talk, pieces);
  if (both === null) return false;
  const finding = findingIn(both.said);
  const { last } = talk.context;
  return both.wrong.every(({ site }) =>
    finding === null
      ? last.some((one) => one.kind === 'finding' && one.site === site)
      : wasTold(talk.context.found, site, finding),
  );
}

const placeOf = ({ site, side, sideKnown, level }: SiteRef): CorrectionTarget => ({
  site,
  ...(side === null || sideKnown !== 'spoken' ? {} : { side }),
  ...(level === null ? {} : { level: level as Level }),
});

const wrongPlace = (ref: SiteRef, named: Statement | null): CorrectionTarget => ({
  kind: 'finding',
  ...(named?.kind === 'finding' ? { finding: named.finding } : {}),
  ...placeOf(ref),
});

// What was said right already is said again, the rest stands in the place of what was wrong.
function inPlaceOf(
  last: readonly Statement[],
  stated: readonly StatementFrame[],
  wrong: readonly CorrectionTarget[],
): readonly Changed[] {
  const left = [...wrong];
  const changed = stated.map((basis): Changed => {
    const { statement } = basis;
    const target = last.some((one) => isSame(one, statement)) ? ownTarget(statement) : left.shift();
    return {
      change: { change: 'statement', statement },
      target: target ?? ownTarget(statement),
      basis,
    };
  });
  return [...changed, ...left.map((target): Changed => ({ change: { change: 'strike' }, target }))];
}

// "The left thigh, not the left shin": the finding stands, and its place is another.
function movedTo(
  last: readonly Statement[],
  refs: readonly SiteRef[],
  wrong: readonly CorrectionTarget[],
): readonly Changed[] | null {
  const left = [...wrong];
  const fresh = refs.filter((ref) => !last.some((one) => one.kind === 'finding' && isAt(one, ref)));
  // A finding of more places than it had: nobody knows yet what is said of the others.
  if (fresh.length > left.length) return null;
  const moved = fresh.map((ref): Changed => {
    const { site, side, level } = placeOf(ref);
    const change = { change: 'site' as const, site: site as SiteRef['site'] };
    return {
      change: {
        ...change,
        ...(side === undefined ? {} : { side }),
        ...(level === undefined ? {} : { level }),
      },
      target: left.shift() ?? {},
    };
  });
  return [...moved, ...left.map((target): Changed => ({ change: { change: 'strike' }, target }))];
}

const isAt = (one: FindingStatement, ref: SiteRef): boolean =>
  one.site === ref.site &&
  (one.level ?? null) === ref.level &&
  (ref.side === null || ref.sideKnown !== 'spoken' || one.side === ref.side);

/** The same finding at the same place, whatever else is said of it. */
export const isSame = (one: Statement, other: Statement): boolean =>
  one.kind === 'finding' &&
  other.kind === 'finding' &&
  one.finding === other.finding &&
  one.site === other.site &&
  one.level === other.level &&
  (one.side === other.side || other.side === null);

/** The entry of the very place that a finding names. */
export const ownTarget = (statement: Statement): CorrectionTarget =>
  statement.kind !== 'finding'
    ? {}
    : {
        kind: 'finding',
        finding: statement.finding,
        site: statement.site,
        ...(statement.level === undefined ? {} : { level: statement.level }),
      };
