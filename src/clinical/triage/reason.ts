// The findings a criterion rests on, in the words of its reason.

import type { EntryOf } from '../chart.ts';
import { findingName } from '../finding-name.ts';
import { placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';

/** The findings with their places, for a criterion's reason. */
export const named = (entries: readonly FindingEntry[]): string =>
  entries.map((entry) => `${findingName(entry)}, ${placeText(entry.site, entry.side)}`).join('; ');

/** The places of entries, each once. */
export const places = (entries: readonly (FindingEntry | EntryOf<'csm'>)[]): string =>
  [...new Set(entries.map((entry) => placeText(entry.site, entry.side)))].join(', ');
