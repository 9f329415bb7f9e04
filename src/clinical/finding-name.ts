// A finding in plain words: what was said to be the matter leads, where the finding's own name is too wide for it.

import type { EntryOf } from './chart.ts';

const words = (text: string): string => text.replaceAll('-', ' ');

/** `open fracture`, `dislocation`; else the finding's name. */
export function findingName(entry: EntryOf<'finding'>): string {
  const [first] = entry.quality ?? [];
  if (first === undefined) return words(entry.finding);
  if (entry.finding === 'abnormality') return words(first);
  return BREAKS.includes(first) ? words(first) : words(entry.finding);
}

const BREAKS: readonly string[] = ['fracture', 'open-fracture', 'dislocation'];
