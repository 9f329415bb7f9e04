// One browser for a test file and one visit for a test; a complaint of the page, or a request that leaves it, fails the test.

import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { type BrowserKind, startBrowser, type Visit, type VisitOptions, visit } from './visit.ts';

export interface Arrival {
  /** opens the page for this test; `settle` leaves it again */
  readonly arrive: (options?: VisitOptions) => Promise<Visit>;
  /** leaves, and holds the page to have been quiet */
  readonly settle: () => Promise<void>;
}

/** Registers the hooks of a test file. */
export function arrivals(kind: BrowserKind = 'shell'): Arrival {
  let browser: Browser;
  let here: Visit | null = null;
  const settle = async () => {
    const { complaints = [], foreign = [] } = here ?? {};
    await here?.leave();
    here = null;
    expect({ complaints, foreign }).toEqual({ complaints: [], foreign: [] });
  };
  beforeAll(async () => {
    browser = await startBrowser(kind);
  });
  afterAll(() => browser?.close());
  afterEach(settle);
  return {
    arrive: async (options) => {
      here = await visit(browser, options);
      return here;
    },
    settle,
  };
}
