// "Correction, the burn is on the left arm": what is moved to its other place keeps how much of it there was, and what else was told of
// the old place is asked about.

import type { FindingStatement, Statement } from '../terms/index.ts';
import { type Entry, stands } from './entry.ts';
import type { RecordState } from './state.ts';

/** True where a finding that is there is put at another place or on the other side, and not on one side of both. */
function isMoved(before: Entry | undefined, now: Statement): before is Entry & FindingStatement {
  if (before?.kind !== 'finding' || now.kind !== 'finding' || before.finding !== now.finding) return false;
  if (!before.present || !now.present) return false;
  return before.site !== now.site || isOtherSide(before, now);
}

const isOtherSide = (before: FindingStatement, now: FindingStatement): boolean =>
  (before.side === 'left' && now.side === 'right') || (before.side === 'right' && now.side === 'left');

/** The statement with the size, number, badness and look of what it moves, where it tells none itself. */
export function movedWhole(now: Statement, before: Entry | undefined): Statement {
  if (now.kind !== 'finding' || !isMoved(before, now)) return now;
  const { size, severity, count, quality } = before;
  return {
    ...now,
    ...(size === undefined || now.size !== undefined ? {} : { size }),
    ...(severity === undefined || now.severity !== undefined ? {} : { severity }),
    ...(count === undefined || now.count !== undefined ? {} : { count }),
    ...(quality === undefined || now.quality !== undefined ? {} : { quality }),
  };
}

/** What else was found or done at the old side of the same site: whether it goes along, nobody said. */
export function leftBehind(
  state: RecordState,
  now: Statement,
  moved: readonly Entry[],
  utterance: string | null,
): readonly string[] {
  const [before] = moved;
  if (now.kind !== 'finding' || !isMoved(before, now) || !isOtherSide(before, now)) return [];
  const own = new Set(
    state.groups.filter((group) => group.utterance === utterance).flatMap(({ entries }) => entries),
  );
  const others = state.entries.filter(
    (entry) =>
      stands(entry) &&
      !moved.includes(entry) &&
      !own.has(entry.id) &&
      ((entry.kind === 'finding' && entry.present) || entry.kind === 'care') &&
      entry.site === before.site &&
      entry.side === before.side,
  );
  if (others.length === 0) return [];
  const words = [...new Set(others.map(({ heard }) => `“${heard}”`))].join(', ');
  return [`Is this on the ${now.side} too: ${words}?`];
}
