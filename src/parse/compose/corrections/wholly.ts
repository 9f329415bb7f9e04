// A correction that makes statements of its own: each stands in the place of what was told of the same thing.

import type { StatementFrame } from '../../frame.ts';
import { marked, type Piece } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';
import { type StateAll, wouldSay } from './dry-run.ts';
import { othersTakenBack } from './only-one.ts';
import { toldOnce } from './same-thing.ts';
import { movedHere, renamedBy, targetOf } from './target.ts';

/** "Correction, right ankle swollen": what its words state by themselves; null where they state nothing. */
export function wholly(talk: Talk, pieces: readonly Piece[], stateAll: StateAll): readonly Changed[] | null {
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
