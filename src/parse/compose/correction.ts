// Composes a correction: what is put in the place of what was said, and which earlier words it means.

import {
  type Care,
  FINDINGS,
  type Finding,
  type Statement,
  type Topic,
  type Vital,
} from '../../terms/index.ts';
import type { Clause } from '../clause.ts';
import type { Change, CorrectionFrame, CorrectionTarget, StatementFrame } from '../frame.ts';
import { tagOf } from '../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import { attributesOf, joinAttributes } from './attributes.ts';
import { itemsOf } from './exam.ts';
import { sideIn } from './side-in.ts';
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
  const frame = (
    change: Change,
    target: CorrectionTarget = {},
    basis?: StatementFrame,
    at: number | undefined = basis?.at,
  ): void => {
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
  if (talk.at !== undefined && pieces.every(({ role }) => role === 'time' || role === 'small')) {
    // "Correction, nine thirty five": the thing stands and its time is another.
    for (const statement of talk.context.said) again(frame, statement, talk.at);
    return talk.context.said.length > 0;
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
  const attributes = pieces.flatMap((piece) => attributesOf(piece) ?? []);
  const findings = talk.context.said.filter((statement) => statement.kind === 'finding');
  if (attributes.some((one) => Object.keys(one).length > 0) && findings.length > 0) {
    // "Correction, severe": the finding stands, and what was said of it is another.
    const joined = attributes.reduce(joinAttributes);
    for (const statement of findings) again(frame, { ...statement, ...joined }, undefined);
    return true;
  }
  const answer = presenceIn(pieces);
  if (answer !== null && talk.context.said.length > 0) {
    frame({ change: 'present', present: answer });
    return true;
  }
  const vital = pieces.find((piece) => piece.role === 'vital');
  const figure = pieces.findLast((piece) => piece.role === 'figure');
  const value = figure === undefined ? undefined : readingOf(figure, 'small.figure')?.slots[0]?.value;
  if (value === undefined) return false;
  const last = talk.context.said.find((statement) => statement.kind === 'vital');
  const named =
    vital?.islands[0] === undefined
      ? unitVital(last?.vital)
      : (tagOf(vital.islands[0], 'vital') as Vital | null);
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
  // A finding that the record has there already is the one that is meant.
  if (talk.context.found.includes(`${site} ${finding}`)) return null;
  const samePlace = before.every((other) => other.site === site && (side === null || other.side === side));
  return samePlace && only.finding !== finding ? { kind: 'finding', finding: only.finding, site } : null;
}

// A bare number for these needs the unit worked out again; the others keep what else was said of them.
const unitVital = (vital: Vital | undefined): Vital | null =>
  vital === 'glucose' || vital === 'temperature' ? vital : null;

type Correct = (change: Change, target: CorrectionTarget, basis?: StatementFrame, at?: number) => void;

/** Puts a statement in the place of the one it was made from. */
function again(frame: Correct, statement: Statement, at: number | undefined): void {
  const target = targetOf({ statement, known: {} });
  const site = statement.kind === 'finding' || statement.kind === 'care' ? statement.site : undefined;
  frame(
    { change: 'statement', statement },
    { ...target, ...(site === undefined ? {} : { site }) },
    undefined,
    at,
  );
}

/** "Correction, absent" and "correction, present": the answer alone, turned. */
function presenceIn(pieces: readonly Piece[]): boolean | null {
  const said = pieces.filter(({ role }) => role !== 'talk');
  if (said.length === 0 || said.length > 2) return null;
  if (
    said.some(
      (piece) =>
        marked(piece, 'negation', 'after') ||
        marked(piece, 'negation', 'before') ||
        marked(piece, 'answer', 'no'),
    )
  )
    return false;
  return said.some((piece) => marked(piece, 'there') || marked(piece, 'answer', 'yes')) ? true : null;
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
function targetOf({ statement, known }: Pick<StatementFrame, 'statement' | 'known'>): CorrectionTarget {
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
