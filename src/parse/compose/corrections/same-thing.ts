// Whether two statements speak of the same thing at the same place, whatever they say of it.

import type { Statement } from '../../../terms/index.ts';
import type { StatementFrame } from '../../frame.ts';

/** True for two findings of one kind, or two checks of one aspect, at one place and side. */
export function sameThing(one: Statement, other: Statement): boolean {
  if (one.kind === 'finding' && other.kind === 'finding')
    return one.finding === other.finding && one.site === other.site && one.side === other.side;
  return (
    one.kind === 'csm' &&
    other.kind === 'csm' &&
    one.aspect === other.aspect &&
    one.site === other.site &&
    one.side === other.side
  );
}

/** "Correction, that's a graze, right calf graze": the same finding told twice is one. */
export const toldOnce = (frames: readonly StatementFrame[]): readonly StatementFrame[] =>
  frames.filter(
    ({ statement }, i) =>
      statement.kind !== 'finding' ||
      !frames.slice(0, i).some((other) => JSON.stringify(other.statement) === JSON.stringify(statement)),
  );
