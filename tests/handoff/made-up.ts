// Invented entries for the tests of reports: no real patient, place or event.

import type { CoverageRow, HandoffInput } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { isPaired, SITES, type Statement } from '../../src/terms/index.ts';

export const STARTED = '2026-05-03T14:02:00-06:00';

/** `14:06` on the invented day, with the offset of its start. */
export const clockTime = (text: string): string => `2026-05-03T${text}:00-06:00`;

type Facts = Partial<Omit<Entry, 'kind'>> & { readonly time?: string };

/** An entry of an invented record, heard and confirmed at 14:06 unless told otherwise. */
export function made(id: string, statement: Statement, { time = '14:06', ...facts }: Facts = {}): Entry {
  const at = clockTime(time);
  return {
    id,
    at,
    heardAt: at,
    heard: `words of ${id}`,
    state: 'confirmed',
    ...statement,
    ...facts,
  } as Entry;
}

export const input = (entries: readonly Entry[], more: Partial<HandoffInput> = {}): HandoffInput => ({
  startedAt: STARTED,
  entries,
  coverage: [],
  now: Date.parse(clockTime('14:40')),
  ...more,
});

/** Coverage in which nothing was examined. */
export const nothingExamined: HandoffInput['coverage'] = SITES.flatMap((site): readonly CoverageRow[] =>
  isPaired(site)
    ? (['left', 'right'] as const).map((side) => ({ site, side, state: 'not-examined' as const }))
    : [{ site, side: null, state: 'not-examined' as const }],
);
