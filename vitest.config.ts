// Runs the tests in two groups: the stages in Node, and the built page in a real browser with more time.

import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const BROWSER = 'tests/browser/**/*.test.ts';

/** They take longest, and last they would have one of two processors wait for the other. */
const LONG =
  /\/(parse\/fuzz|speech\/(hearing|long-recording|pause-words)|browser\/(hearing|sound|changes|transfer|large)|handoff\/round-trip|replay\/command-line|post\/silence|clinical\/properties)\.test\.ts$/;

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification): boolean => LONG.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((one) => !isLong(one))];
  }
}

export default defineConfig({
  test: {
    sequence: { sequencer: LongFirst },
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
