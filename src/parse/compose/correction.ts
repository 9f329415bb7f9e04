// Composes a correction: what is put in the place of what was said, and which earlier words it means.

import {
  type Care,
  FINDINGS,
  type Finding,
  type Side,
  type Statement,
  type Topic,
  type Vital,
} from '../../terms/index.ts';
import type { Clause } from '../clause.ts';
import type { Change, CorrectionFrame, CorrectionTarget, StatementFrame } from '../frame.ts';
import { tagOf } from '../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import { itemsOf } from './exam.ts';
import { place, spanOf, type Talk, textOf } from './talk.ts';
import { vitalFromFigure } from './vital.ts';

type StateClause = (talk: Talk, pieces: readonly Piece[]) => void;

/** Corrects with the words of this clause; false where nothing in it can stand in the place of anything. */
export function correct(talk: Talk, clause: Clause, stateClause: StateClause): boolean {
  const said = clause.pieces.filter((piece) => piece.role !== 'correction');
  // "No, the right": the "no" takes back, and does not negate what follows.
  const pieces = said[0] !== undefined && marked(said[0], 'plain') ? said.slice(1) : said;
  const from = clause.pieces[0]?.from ?? 0;
  const to = clause.pieces.at(-1)?.to ?? 0;
  const frame = (change: Change, target: CorrectionTarget = {}, basis?: StatementFrame): void => {
    talk.frames.push({
      frame: 'correction',
      target,
      change,
      heard: textOf(talk, from, to),
      span: spanOf(talk, from, to),
      known: basis?.known ?? {},
      doubt: basis?.doubt ?? [],
      ...(basis?.at === undefined ? {} : { at: basis.at }),
    });
    place(talk, { from, to });
  };
  const trial = dryRun(talk, pieces, stateClause);
  const statements = trial.filter(({ statement }) => statement.kind !== 'visit' && statement.kind !== 'note');
  if (statements.length > 0) {
    const renamed = renames(talk, statements);
    for (const one of statements)
      frame({ change: 'statement', statement: one.statement }, renamed ?? targetOf(one), one);
    return true;
  }
  const items = itemsOf(talk, pieces);
  const site = items.findLast((item) => item.type === 'site');
  const ref = site?.type === 'site' ? site.phrase.sites[0] : undefined;
  if (ref !== undefined) {
    const turned = ref.side ?? sideIn(pieces)?.side ?? null;
    // "The forearm is the left one" turns what was said of the forearm, whatever was said since.
    const link = items.some(
      (item) => item.type === 'piece' && (isSmall(item.piece, 'link') || item.piece.role === 'asking'),
    );
    if (link && turned !== null && ref.side === null)
      frame({ change: 'side', side: turned }, { site: ref.site });
    else
      frame({
        change: 'site',
        site: ref.site,
        ...(turned === null ? {} : { side: turned }),
        ...(ref.level === null ? {} : { level: ref.level }),
      });
    return true;
  }
  const side = sideIn(pieces);
  if (side !== null) {
    frame({ change: 'side', side: side.side }, side.instead === null ? {} : { side: side.instead });
    return true;
  }
  const finding = findingIn(pieces);
  if (finding !== null) {
    frame({ change: 'finding', finding });
    return true;
  }
  const vital = pieces.find((piece) => piece.role === 'vital');
  const figure = pieces.findLast((piece) => piece.role === 'figure');
  const value = figure === undefined ? undefined : readingOf(figure, 'small.figure')?.slots[0]?.value;
  if (value === undefined) return false;
  const named = vital?.islands[0] === undefined ? null : (tagOf(vital.islands[0], 'vital') as Vital | null);
  const read = named === null ? null : vitalFromFigure(named, value);
  if (read !== null && named !== null)
    frame({ change: 'statement', statement: read.statement }, { kind: 'vital', vital: named });
  else frame({ change: 'number', value });
  return true;
}

// "Abrasion to the chin. Sorry, laceration": another finding at the same place takes the place of the one just said.
function renames(talk: Talk, statements: readonly StatementFrame[]): CorrectionTarget | null {
  const [one] = statements;
  const last = talk.context.last;
  if (statements.length !== 1 || one?.statement.kind !== 'finding') return null;
  const { site, side, finding } = one.statement;
  const before = last.filter((statement) => statement.kind === 'finding');
  const [only] = before;
  if (
    only === undefined ||
    before.length !== last.length ||
    before.some((other) => other.finding !== only.finding)
  )
    return null;
  const samePlace = before.every((other) => other.site === site && (side === null || other.side === side));
  return samePlace && only.finding !== finding ? { kind: 'finding', finding: only.finding, site } : null;
}

/** What these pieces would state, without stating it. */
export function dryRun(
  talk: Talk,
  pieces: readonly Piece[],
  stateClause: StateClause,
): readonly StatementFrame[] {
  const copy: Talk = { ...talk, frames: [], placed: [...talk.placed], asking: [] };
  stateClause(copy, pieces);
  const frames = copy.frames.filter((frame): frame is StatementFrame => frame.frame === 'statement');
  // The site that a correction names is the one in mind from then on.
  if (frames.length > 0) talk.context = { ...talk.context, sites: copy.context.sites };
  return frames;
}

/** The earlier entry that a whole statement is to replace. */
function targetOf({ statement, known }: StatementFrame): CorrectionTarget {
  switch (statement.kind) {
    case 'finding':
      return {
        kind: 'finding',
        finding: statement.finding,
        ...(known.site === undefined ? { site: statement.site } : {}),
      };
    case 'vital':
      return { kind: 'vital', vital: statement.vital };
    case 'care':
      return { kind: 'care', care: statement.care };
    case 'history':
      return { kind: 'history', topic: statement.topic };
    case 'csm':
      return { kind: 'csm', site: statement.site };
    default:
      return {};
  }
}

interface SaidSide {
  readonly side: Side;
  /** the side it was not ("not the left, the right") */
  readonly instead: Side | null;
}

/** The side a clause ends on, and the one it takes back. */
export function sideIn(pieces: readonly Piece[]): SaidSide | null {
  const sides: { side: Side; negated: boolean }[] = [];
  let negated = false;
  for (const piece of pieces) {
    if (readingOf(piece, 'negation') !== null) negated = true;
    if (piece.role !== 'side') continue;
    const island = readingOf(piece, 'sides.side-after') ?? readingOf(piece, 'sides.side-before');
    const side = island === null ? null : tagOf(island, 'side');
    if (side === null || side === 'mirror') continue;
    sides.push({ side: side as Side, negated });
    negated = false;
  }
  const last = sides.findLast((one) => !one.negated) ?? null;
  return last === null
    ? null
    : { side: last.side, instead: sides.find((one) => one.side !== last.side)?.side ?? null };
}

function findingIn(pieces: readonly Piece[]): Finding | null {
  for (const piece of pieces) {
    const island = readingOf(piece, 'findings.finding');
    const finding = island === null ? null : tagOf(island, 'finding');
    if (finding !== null && (FINDINGS as readonly string[]).includes(finding)) return finding as Finding;
  }
  return null;
}

/** Takes back what was said: the last thing, or what is named. */
export function strike(talk: Talk, clause: Clause): void {
  const from = clause.pieces[0]?.from ?? 0;
  const to = clause.pieces.at(-1)?.to ?? 0;
  talk.frames.push({
    frame: 'correction',
    target: named(talk, clause.pieces.slice(1)),
    change: { change: 'strike' },
    heard: textOf(talk, from, to),
    span: spanOf(talk, from, to),
    known: {},
    doubt: [],
  } satisfies CorrectionFrame);
  place(talk, { from, to });
}

function named(talk: Talk, pieces: readonly Piece[]): CorrectionTarget {
  const target: { -readonly [K in keyof CorrectionTarget]: CorrectionTarget[K] } = {};
  const finding = findingIn(pieces);
  if (finding !== null) Object.assign(target, { kind: 'finding', finding });
  for (const piece of pieces) {
    const island = piece.islands[0];
    if (island === undefined) continue;
    const put = (kind: Statement['kind'], key: 'vital' | 'care' | 'topic', value: string | null) => {
      if (value !== null) Object.assign(target, { kind, [key]: value as Vital & Care & Topic });
    };
    if (piece.role === 'vital') put('vital', 'vital', tagOf(island, 'vital'));
    if (piece.role === 'care') put('care', 'care', tagOf(island, 'care'));
    if (piece.role === 'history') put('history', 'topic', tagOf(island, 'topic'));
    if (piece.role === 'csm' && tagOf(island, 'pulse') === null) target.kind = 'csm';
  }
  for (const item of itemsOf(talk, pieces)) {
    const ref = item.type === 'site' ? item.phrase.sites[0] : undefined;
    if (ref === undefined) continue;
    target.site = ref.site;
    if (ref.side !== null) target.side = ref.side;
  }
  return target;
}
