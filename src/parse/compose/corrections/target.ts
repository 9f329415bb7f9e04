// Which earlier entries a correction means, by what it says itself.

import type { Statement } from '../../../terms/index.ts';
import type { Context } from '../../context.ts';
import type { CorrectionTarget, StatementFrame } from '../../frame.ts';
import { wasTold } from '../../told.ts';

/** The earlier entry that a whole statement is to replace. */
export function targetOf({
  statement,
  known,
}: Pick<StatementFrame, 'statement' | 'known'>): CorrectionTarget {
  switch (statement.kind) {
    case 'finding': {
      const { finding, site } = statement;
      return { kind: 'finding', finding, ...(known.site === undefined ? { site } : {}) };
    }
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

/** The entry that a statement was made from, with its own site. */
export function sameTarget(statement: Statement): CorrectionTarget {
  const site = statement.kind === 'finding' || statement.kind === 'care' ? statement.site : undefined;
  return { ...targetOf({ statement, known: {} }), ...(site === undefined ? {} : { site }) };
}

/** "Abrasion to the chin. Sorry, laceration": another finding at the same place takes the place of the one just said. */
export function renamedBy(context: Context, statements: readonly StatementFrame[]): CorrectionTarget | null {
  const [one, ...others] = statements;
  if (others.length > 0 || one?.statement.kind !== 'finding') return null;
  const { site, side, finding } = one.statement;
  const before = context.last.filter((statement) => statement.kind === 'finding');
  const [only] = before;
  if (only === undefined || before.length !== context.last.length) return null;
  if (before.some((other) => other.finding !== only.finding)) return null;
  // A finding that the record has there already is the one that is meant.
  if (wasTold(context.found, site, finding)) return null;
  const samePlace = before.every((other) => other.site === site && (side === null || other.side === side));
  return samePlace && only.finding !== finding ? { kind: 'finding', finding: only.finding, site } : null;
}

/** "A graze on the right forearm. Correction, it's the right elbow there's the graze": the same finding, told last, was at another place. */
export function movedHere(context: Context, basis: StatementFrame | undefined): CorrectionTarget | null {
  const { statement, known } = basis ?? {};
  if (statement?.kind !== 'finding' || !statement.present || known?.site !== undefined) return null;
  const { finding, site } = statement;
  const [only, ...others] = context.last.filter(
    (one) => one.kind === 'finding' && one.present && one.finding === finding,
  );
  if (only?.kind !== 'finding' || others.length > 0) return null;
  if (only.side === 'both' || wasTold(context.found, site, finding)) return null;
  return { kind: 'finding', finding, site: only.site, ...(only.side === null ? {} : { side: only.side }) };
}
