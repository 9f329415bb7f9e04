// Runs the tests in two groups: the stages in Node, and the built page in a real browser with more time.

import { defineConfig } from 'vitest/config';

const BROWSER = 'tests/browser/**/*.test.ts';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'stages',
          // Node 20 has a WebSocket behind this; the line of a page is tried with it outside a browser too.
          execArgv: ['--experimental-websocket', '--disable-warning=ExperimentalWarning'],
          include: ['tests/**/*.test.ts'],
          exclude: [BROWSER],
          // No test is timed: a busy machine is no fault.
          testTimeout: 120_000,
          hookTimeout: 120_000,
          maxWorkers: 2,
          // The grammar is read once by each worker and not once by each file.
          isolate: false,
        },
      },
      {
        test: {
          name: 'browser',
          include: [BROWSER],
          benchmark: { include: [] },
          globalSetup: ['tests/browser/setup.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // Two browsers at a time: more of them wait for each other's processor and time out for no fault of theirs.
          maxWorkers: 2,
        },
      },
    ],
  },
});
