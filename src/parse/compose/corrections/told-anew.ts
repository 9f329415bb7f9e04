// What was told of the history and is told again otherwise: "allergic to codeine, not morphine", "correction, Ewan".

import type { HistoryStatement, Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { tellsTime } from '../../times/index.ts';
import { place, type Talk, textOf } from '../talk.ts';
import type { Changed } from './changes.ts';
import { change } from './correction.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { sameTarget } from './target.ts';

/** True where a clause tells a topic anew and names what was last told of it as what it is not. */
export function tellsAnew(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const last = lastTold(talk);
  if (last === null || !talk.tokens.slice(...range(clause.pieces)).some(({ word }) => word === 'not'))
    return false;
  const [one, ...others] = wouldSay({ ...talk }, clause.pieces, stateAll);
  if (one?.statement.kind !== 'history' || one.statement.topic !== last.topic || others.length > 0)
    return false;
  const wrong = NOT_THAT.exec(one.statement.text.toLowerCase())?.[1];
  return wrong !== undefined && last.text.toLowerCase().includes(wrong.trim());
}

const NOT_THAT = /[, ]not ([^,]+)$/;

const range = (pieces: readonly Piece[]): [number, number] => {
  const { from, to } = spanned(pieces);
  return [from, to];
};

const lastTold = ({ context: { said } }: Talk): HistoryStatement | null => {
  const last = said.at(-1);
  return last?.kind === 'history' ? last : null;
};

// Of these a patient has one.
const ONLY: ReadonlySet<string> = new Set(['age', 'weight', 'name', 'sex']);

/** "He's fifty four. Sorry, forty five years old": what there is one of is told anew; false where the clause tells something else. */
export function tellsOnlyAnew(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const first = clause.pieces.findIndex(({ role }) => role !== 'small' && role !== 'talk');
  if (clause.pieces[first]?.role !== 'correction') return false;
  const { said } = talk.context;
  const [one, ...others] = wouldSay({ ...talk }, clause.pieces.slice(first + 1), stateAll);
  const { statement } = one ?? {};
  if (one === undefined || others.length > 0 || statement?.kind !== 'history' || !ONLY.has(statement.topic))
    return false;
  if (!said.some((last) => last.kind === 'history' && last.topic === statement.topic)) return false;
  const basis = { statement, known: one.known, doubt: one.doubt };
  const from = talk.tokens.findIndex((token) => token.from === one.span[0]);
  const to = talk.tokens.findIndex((token) => token.to === one.span[1]) + 1;
  change(talk, [{ change: { change: 'statement', statement }, target: sameTarget(statement), basis }], {
    from: Math.max(0, from),
    to,
  });
  place(talk, ...clause.pieces.slice(0, first + 1));
  return true;
}

const MOST_NAMES = 3;

/** "Correction, Ewan": words that nobody knows stand in the place of a name that was last told. */
export function renamed(talk: Talk, pieces: readonly Piece[]): readonly Changed[] | null {
  const last = lastTold(talk);
  const said = pieces.filter(({ role }) => role !== 'talk' && role !== 'small');
  if (last?.topic !== 'name' || said.length === 0 || said.length > MOST_NAMES) return null;
  if (!said.every(({ role }) => role === 'unknown')) return null;
  const { from, to } = spanned(said);
  const statement: HistoryStatement = { kind: 'history', topic: 'name', text: textOf(talk, from, to) };
  return [{ change: { change: 'statement', statement }, target: sameTarget(statement) }];
}

/** A statement whose time is put right: where its text tells the old one, the words that put it right are told with it. */
export function retimed(talk: Talk, statement: Statement, pieces: readonly Piece[]): Statement {
  if (statement.kind !== 'history' || !tellsTime(statement.text)) return statement;
  const { from, to } = spanned(pieces);
  return { ...statement, text: `${statement.text}, corrected: ${textOf(talk, from, to)}` };
}
