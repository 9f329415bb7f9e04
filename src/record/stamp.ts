// An entry before it has its identifier, and the entry with one.

import type { EnteredEntry } from './event.ts';

export type EntryDraft = Omit<EnteredEntry, 'id'>;

/** The drafts with identifiers made from that of the event that enters them: `field-7`, `field-7.2` … */
export const stamp = (drafts: readonly EntryDraft[], event: string): readonly EnteredEntry[] =>
  drafts.map((draft, index) => ({ id: index === 0 ? event : `${event}.${index + 1}`, ...draft }));
