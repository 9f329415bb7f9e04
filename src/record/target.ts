// Which earlier entries a correction may mean, and in which order their groups are tried: the latest that fits first.

import type { CorrectionTarget } from '../parse/frame.ts';
import type { Side } from '../terms/index.ts';
import { type Entry, stands } from './entry.ts';
import type { Group, RecordState } from './state.ts';

/** A group with those of its entries that stand and fit. */
export interface Candidates {
  readonly group: Group;
  readonly entries: readonly Entry[];
}

/** True where every slot the target gives is the entry's own. What was said of both sides fits either. */
export function fits(entry: Entry, target: CorrectionTarget): boolean {
  const slots = new Map<string, unknown>(Object.entries(entry));
  return Object.entries(target).every(([slot, wanted]) =>
    slot === 'side'
      ? sideFits(slots.get(slot), wanted as Side)
      : slots.get(slot) === wanted || (slot === 'site' && isWithin(slots.get(slot), wanted)),
  );
}

const sideFits = (has: unknown, wanted: Side): boolean =>
  has === wanted || (has === 'both' && (wanted === 'left' || wanted === 'right'));

/** "Scratch the belly guarding" means what was said of one of its quadrants too. */
const isWithin = (site: unknown, wanted: unknown): boolean =>
  wanted === 'abdomen' && (site === 'upper-quadrant' || site === 'lower-quadrant');

/** True for what a responder would call the last thing said: a visit or a note gives way to anything of substance. */
export const isSubstance = (entry: Entry): boolean => entry.kind !== 'visit' && entry.kind !== 'note';

/** The groups with standing entries that fit the target, the latest first. */
export function groupsThatFit(state: RecordState, target: CorrectionTarget): readonly Candidates[] {
  const byId = new Map(state.entries.map((entry) => [entry.id, entry]));
  const groups = state.groups
    .toReversed()
    .map((group) => ({
      group,
      entries: group.entries
        .flatMap((id) => byId.get(id) ?? [])
        .filter((entry) => stands(entry) && fits(entry, target)),
    }))
    .filter(({ entries }) => entries.length > 0);
  if (target.kind === 'visit' || target.kind === 'note') return groups;
  const substance = groups.filter(({ entries }) => entries.some(isSubstance));
  return substance.length > 0 ? substance : groups;
}
