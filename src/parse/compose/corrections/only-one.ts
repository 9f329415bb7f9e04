// "Both knees hurt. No, only the right one": of what was said of both sides the one stays, and what was said of the other is taken back.

import type { FindingStatement, Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { StatementFrame } from '../../frame.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { otherSide } from '../sites/side.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';

const ONLY = /\b(only|just)( (on|in|at|over|of))?( (the|his|her|my|their|your))? (left|right)\b/;

/** What takes the other side back where these pieces say that only one is so, and both were said to be; none for other words. */
export function othersTakenBack(
  talk: Talk,
  pieces: readonly Piece[],
  statements: readonly StatementFrame[],
): readonly Changed[] {
  const { from, to } = spanned(pieces);
  if (!ONLY.test(saidIn(talk.tokens, from, to))) return [];
  return statements.flatMap(({ statement }): readonly Changed[] => {
    const side = 'side' in statement ? otherSide(statement.side ?? null) : null;
    if (statement.kind !== 'finding' || (side !== 'left' && side !== 'right')) return [];
    if (!talk.context.said.some((one) => isOfBoth(one, statement))) return [];
    const { kind, finding, site } = statement;
    return [{ change: { change: 'strike' }, target: { kind, finding, site, side } }];
  });
}

const isOfBoth = (one: Statement, { finding, site, present }: FindingStatement): boolean =>
  one.kind === 'finding' &&
  one.side === 'both' &&
  one.finding === finding &&
  one.site === site &&
  one.present === present;

/** True for "no, only the right hand is swollen" straight behind what was said of both. */
export function saysOnlyOne(talk: Talk, { pieces }: Clause, stateAll: StateAll): boolean {
  const [first, ...rest] = pieces;
  if (first === undefined || rest.length === 0 || !marked(first, 'plain')) return false;
  if (!talk.context.said.some((one) => one.kind === 'finding' && one.side === 'both')) return false;
  const { from, to } = spanned(rest);
  if (!ONLY.test(saidIn(talk.tokens, from, to))) return false;
  return othersTakenBack(talk, rest, wouldSay({ ...talk }, rest, stateAll)).length > 0;
}
