// "Same on the right": what was last said of one side, stated again of the other.

import { isPaired, type Side, type Statement } from '../../terms/index.ts';
import { tagOf } from '../islands/island.ts';
import { type Piece, readingOf } from '../pieces/piece.ts';
import { bear, type HowKnown, otherSide, place, type Said, state, type Talk } from './talk.ts';

/** States the last findings again of the side that is named; false where there is nothing to say again. */
export function sameAgain(talk: Talk, pieces: readonly Piece[]): boolean {
  const piece = pieces.find((one) => one.role === 'same');
  const island = piece === undefined ? null : readingOf(piece, 'sides.same');
  if (piece === undefined || island === null) return false;
  const named = tagOf(island, 'side') as Side | 'mirror' | null;
  const said = talk.context.last.flatMap((statement): Said[] => {
    const again = onSide(statement, named);
    const known: HowKnown = {
      site: 'carried',
      finding: 'carried',
      present: 'carried',
      ...(named === 'mirror' ? { side: 'carried' as const } : {}),
    };
    return again === null ? [] : [{ statement: again, known, from: piece.from, to: piece.to }];
  });
  if (said.length === 0) return false;
  state(talk, said);
  place(talk, piece);
  bear(talk, {
    sites: talk.context.sites.map((ref) => ({
      ...ref,
      side: named === 'mirror' || named === null ? otherSide(ref.side) : named,
      sideKnown: 'carried',
    })),
  });
  return true;
}

function onSide(statement: Statement, named: Side | 'mirror' | null): Statement | null {
  if (statement.kind !== 'finding' && statement.kind !== 'csm') return null;
  if (!isPaired(statement.site) && statement.side === null) return null;
  const side = named === 'mirror' || named === null ? otherSide(statement.side) : named;
  // What was said of both sides, or of none, has no other side to be the same on.
  return side === null || side === 'both' || side === statement.side ? null : { ...statement, side };
}
