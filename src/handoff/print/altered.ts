// What no longer stands, beside what took its place: a hospital sees that it was said and that it was taken back.

import { stands } from '../../record/entry.ts';
import { brief, clock, type Day } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import type { Cell, PrintedTable } from './findings.ts';

const cell = (text: string, entries: readonly string[] = []): readonly Cell[] => [
  { text, entries, weight: 'none' },
];

/** The table, or null where everything said still stands. */
export function alteredTable({ entries }: HandoffInput, day: Day): PrintedTable | null {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const gone = entries.filter((entry) => !stands(entry));
  if (gone.length === 0) return null;
  return {
    title: 'Corrected and struck',
    columns: ['Heard at', 'Was', 'Became', 'Words heard'],
    rows: gone.map((entry) => {
      const heir = entry.replacedBy === undefined ? undefined : byId.get(entry.replacedBy);
      const became = entry.state === 'struck' ? 'struck' : heir === undefined ? 'replaced' : brief(heir);
      return [
        cell(clock(entry.heardAt, day)),
        cell(brief(entry), [entry.id]),
        cell(became),
        cell(`“${entry.heard}”`),
      ];
    }),
  };
}
