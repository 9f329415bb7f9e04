// What a run of the benchmarks found, as it is kept, and how a later run compares with it: ratios beside ratios, since
// times hold only for one machine at one moment.

import { cpus } from 'node:os';
import type { Bench, Row } from './bench.ts';

export interface Results {
  /** ISO 8601 */
  readonly at: string;
  readonly machine: string;
  readonly benches: readonly {
    readonly title: string;
    readonly method: string;
    readonly rows: readonly Row[];
  }[];
}

/** This machine in a few words. */
export const machine = (): string =>
  `${cpus().length} x ${cpus()[0]?.model.trim() ?? 'unknown'}, ${process.platform}, Node ${process.version}`;

export const resultsOf = (
  done: readonly { readonly bench: Bench; readonly rows: readonly Row[] }[],
): Results => ({
  at: new Date().toISOString(),
  machine: machine(),
  benches: done.map(({ bench: { title, method }, rows }) => ({ title, method, rows })),
});

export interface Compared {
  readonly title: string;
  readonly what: string;
  readonly before: number;
  readonly now: number;
}

/** The rows that both runs have, in the order of the later one. */
export const compared = (before: Results, now: Results): readonly Compared[] =>
  now.benches.flatMap(({ title, rows }) => {
    const earlier = before.benches.find((bench) => bench.title === title)?.rows ?? [];
    return rows.flatMap(({ what, ratio }) => {
      const same = earlier.find((row) => row.what === what);
      return same === undefined ? [] : [{ title, what, before: same.ratio, now: ratio }];
    });
  });

/** A ratio that grew by more than this is worth a look; less is the noise of one run. Common practice, no source. */
const WORSE = 1.3;

export const isWorse = ({ before, now }: Compared): boolean => before > 0 && now / before > WORSE;

/** One line for each row of the comparison; what grew is marked. */
export const comparisonOf = (rows: readonly Compared[]): string =>
  rows
    .map(
      (row) =>
        `${isWorse(row) ? 'WORSE ' : '      '}${row.before.toFixed(2)} -> ${row.now.toFixed(2)}  ${row.what} (${row.title})`,
    )
    .join('\n');
