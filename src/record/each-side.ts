// A check of both limbs is a check of each: "C S M intact in both feet" is kept as it would be of all four, limb by limb.

import type { EntryDraft } from './stamp.ts';

/**
 * The drafts of one draft, left and right where a check of circulation, sensation or motion was said of both. How the two compare
 * ("grips equal") is said of both together and stays one.
 */
export function eachSide<Draft extends Pick<EntryDraft, 'statement'>>(draft: Draft): readonly Draft[] {
  const { statement } = draft;
  if (statement.kind !== 'csm' || statement.side !== 'both') return [draft];
  if (statement.strength === 'equal' || statement.strength === 'unequal') return [draft];
  return (['left', 'right'] as const).map((side) => ({ ...draft, statement: { ...statement, side } }));
}
