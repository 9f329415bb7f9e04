// The shape of a benchmark: a title, one line on how it is measured, and rows whose ratios hold on any machine.

export interface Row {
  readonly what: string;
  /** median of the runs, milliseconds on this machine at this moment */
  readonly medianMs: number;
  /** where the row measures something else: the figure is then in this unit */
  readonly unit?: 'ms' | 'MB';
  /** times what the table compares with; 1 for that itself */
  readonly ratio: number;
}

export interface Bench {
  readonly title: string;
  /** one line: what is run, how often, and what it is compared with */
  readonly method: string;
  readonly run: () => readonly Row[] | Promise<readonly Row[]>;
}

/** Runs the work so many times, each on what `prepare` hands it, and gives the middle of the times in milliseconds. */
export function medianOf<T>(runs: number, prepare: (run: number) => T, work: (on: T) => void): number {
  const times = Array.from({ length: runs }, (_, run) => {
    const on = prepare(run);
    const start = performance.now();
    work(on);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return times[Math.floor(runs / 2)] ?? 0;
}
