// How a corrected entry's slots are known, what stays in doubt, and the words that its values go back to.

import type { Known } from '../terms/index.ts';
import type { Outcome } from './change/outcome.ts';
import type { Entry } from './entry.ts';
import type { RecordState } from './state.ts';

type Changed = Extract<Outcome, { kind: 'changed' }>;
type KnownSlots = Readonly<Record<string, Exclude<Known, 'spoken'>>>;

/** What the correction spoke is spoken; what it left keeps how it was known; its own carried slots are added. */
export function newKnown(entry: Entry, outcome: Changed, framed: KnownSlots): KnownSlots {
  const kept = Object.entries(entry.known ?? {}).filter(([slot]) => !outcome.spoken.includes(slot));
  const carried = (outcome.carried ?? []).map((slot) => [slot, 'carried'] as const);
  return Object.fromEntries([...kept, ...carried, ...Object.entries(framed)]);
}

/** Earlier doubts stay, but for those about a slot that the correction has now spoken. */
export function newDoubts(entry: Entry, outcome: Changed, added: readonly string[]): readonly string[] {
  const open = (entry.doubt ?? []).filter(
    (doubt) => !outcome.spoken.some((slot) => new RegExp(`\\b${slot}\\b`, 'i').test(doubt)),
  );
  return [...new Set([...open, ...(outcome.doubt ?? []), ...added])];
}

/** The words of the entry and of those it took the place of, oldest first: a unit may have been said only once. */
export function wordsOf(state: RecordState, entry: Entry): string {
  const words = [entry.heard];
  let id = entry.id;
  for (const earlier of state.entries.toReversed()) {
    if (earlier.replacedBy !== id) continue;
    words.unshift(earlier.heard);
    id = earlier.id;
  }
  return words.join(' … ');
}
