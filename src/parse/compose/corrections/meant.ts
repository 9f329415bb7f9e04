// "That gash I said was on the left shin, correction, it's the right shin": what stands before the correction names what is meant, and states
// nothing again.

import type { Clause } from '../../clauses/clause.ts';
import type { CorrectionTarget } from '../../frame.ts';
import { saidIn } from '../../token.ts';
import { wasTold } from '../../told.ts';
import { place, type Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';

const NAMES = /^((oh|and|so|actually|now|well) )*(that|the) /;

/** Bears in mind which finding a clause names for the correction that follows it; false where it names none that was told. */
export function namesMeant(talk: Talk, clause: Clause, stateAll: StateAll): boolean {
  const { clauses, tokens, context } = talk;
  const next = clauses[clauses.indexOf(clause) + 1];
  const [first] = clause.pieces;
  if (next?.mood !== 'correction' || first === undefined) return false;
  if (!NAMES.test(`${saidIn(tokens, first.from, clause.pieces.at(-1)?.to ?? first.to)} `)) return false;
  const [one, ...others] = wouldSay({ ...talk }, clause.pieces, stateAll);
  const { statement } = one ?? {};
  if (statement?.kind !== 'finding' || others.length > 0) return false;
  const { finding, site, side } = statement;
  if (!wasTold(context.found, site, finding)) return false;
  talk.meant = { kind: 'finding', finding, site, ...(side === null ? {} : { side }) };
  place(talk, ...clause.pieces);
  return true;
}

/** The changes, turned to what was named before them. */
export function ofMeant(talk: Talk, changes: readonly Changed[]): readonly Changed[] {
  const { meant } = talk;
  talk.meant = null;
  return meant === null ? changes : changes.slice(0, 1).map((one) => turnedTo(one, meant));
}

// "… make that a laceration": it names no place of its own, and is at the place that was named.
function turnedTo(one: Changed, meant: CorrectionTarget): Changed {
  const { change, basis } = one;
  if (change.change !== 'statement' || change.statement.kind !== 'finding' || basis?.known.site === undefined)
    return { ...one, target: meant };
  const { site = change.statement.site, side = change.statement.side } = meant;
  const statement = { ...change.statement, site, side };
  return {
    ...one,
    change: { change: 'statement', statement },
    target: meant,
    basis: { ...basis, statement },
  };
}
