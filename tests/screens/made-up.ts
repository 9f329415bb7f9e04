// Invented entries and records for the tests of what the page shows.

import type { Entry } from '../../src/record/index.ts';
import type { Statement } from '../../src/terms/index.ts';

const AT = '2031-04-05T10:00:00+02:00';

let count = 0;

/** An entry that was just heard; `more` overrides its facts. */
export function entry(statement: Statement, more: Partial<Entry> = {}): Entry {
  count += 1;
  return {
    id: `made-${count}`,
    at: AT,
    heardAt: AT,
    heard: 'invented words',
    state: 'heard',
    ...statement,
    ...more,
  } as Entry;
}

export const swelling = {
  kind: 'finding',
  site: 'forearm',
  side: 'left',
  finding: 'swelling',
  present: true,
} as const satisfies Statement;
