// A finding in plain words: what was said to be the matter leads, where the finding's own name is too wide for it.

import { BREAKS } from './broken.ts';
import type { EntryOf } from './chart.ts';

const words = (text: string): string => text.replaceAll('-', ' ');

/** `open fracture`, `dislocation`; else the finding's name. */
export function findingName(entry: EntryOf<'finding'>): string {
  const [first] = entry.quality ?? [];
  if (first === undefined) return words(entry.finding);
  return entry.finding === 'abnormality' || BREAKS.includes(first) ? words(first) : words(entry.finding);
}
