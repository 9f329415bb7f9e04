// What a phone must keep to stay in an incident over restarts; where it is kept is the page's affair.

import type { Got, Row } from './outbox.ts';

export interface LedgerState {
  /** names this phone and browser, made when it joined */
  readonly install: string;
  readonly rows: readonly Row[];
  /** null before the post's first word: until then nothing is sent */
  readonly got: Got | null;
}

export interface Ledger {
  load(): Promise<LedgerState>;
  /** resolves when it is on the disk; rejects where it is not, and then nothing of the row may be sent */
  add(row: Row): Promise<void>;
  keepGot(got: Got): Promise<void>;
}

/** A ledger that lasts as long as its owner; for what has no disk, such as a simulated phone. */
export function createMemoryLedger(install: string): Ledger {
  const rows: Row[] = [];
  let got: Got | null = null;
  return {
    load: async () => ({ install, rows: [...rows], got }),
    add: async (row) => {
      rows.push(row);
    },
    keepGot: async (next) => {
      got = next;
    },
  };
}
