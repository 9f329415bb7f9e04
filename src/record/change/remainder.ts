// When a correction speaks of one side of what was said of both, the other side keeps what was said of it.

import type { Side, Statement } from '../../terms/index.ts';

/** The statement for the side that the correction left alone, or null where nothing is left over. */
export function remainderOf(statement: Statement, correctedSide: Side | null | undefined): Statement | null {
  if (!('side' in statement) || statement.side !== 'both') return null;
  if (correctedSide === 'left') return { ...statement, side: 'right' };
  if (correctedSide === 'right') return { ...statement, side: 'left' };
  return null;
}
