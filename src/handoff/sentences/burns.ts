// The burned share of the body as reports tell it: with what was said against a burn that it counts.

import { burnsOf, chartOf } from '../../clinical/index.ts';
import { type Entry, standing } from '../../record/entry.ts';
import type { HandoffInput } from '../input.ts';

export interface BurnedShare {
  readonly percent: number;
  /** `but a burn of the right arm was denied at 09:15`; null where nothing stands against it */
  readonly but: string | null;
  /** the burns, and what was said against them */
  readonly entries: readonly Entry[];
}

/** The share, or null where none is known. */
export function burnedShare({ entries, scores }: HandoffInput): BurnedShare | null {
  if (scores === undefined) return null;
  const burns = standing(entries, 'finding').filter(({ finding, present }) => finding === 'burn' && present);
  if (scores.burnPercent !== null) return { percent: scores.burnPercent, but: null, entries: burns };
  const denied = burns.length === 0 ? null : (burnsOf(chartOf(entries))?.denied ?? null);
  if (denied === null || denied.percent === null) return null;
  return {
    percent: denied.percent,
    but: `but ${denied.words.join(', and ')}`,
    entries: [...burns, ...entries.filter(({ id }) => denied.by.includes(id))],
  };
}
