// What was told of the history and is told again otherwise: "allergic to codeine, not morphine", "correction, Ewan".

import type { HistoryStatement, Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { type Talk, textOf } from '../talk.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { sameTarget } from './target.ts';

/** True where a clause tells a topic anew and names what was last told of it as what it is not. */
export function tellsAnew(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const last = lastTold(talk);
  if (last === null || !talk.tokens.slice(...range(clause.pieces)).some(({ word }) => word === 'not'))
    return false;
  const [one, ...others] = wouldSay(talk, clause.pieces, stateAll);
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

const TELLS_TIME =
  /\b(ago|at|hours?|minutes?|noon|midday|midnight|yesterday|today|tonight|morning|night|\d+)\b/i;

/** A statement whose time is put right: where its text tells the old one, the words that put it right are told with it. */
export function retimed(talk: Talk, statement: Statement, pieces: readonly Piece[]): Statement {
  if (statement.kind !== 'history' || !TELLS_TIME.test(statement.text)) return statement;
  const { from, to } = spanned(pieces);
  return { ...statement, text: `${statement.text}, corrected: ${textOf(talk, from, to)}` };
}
