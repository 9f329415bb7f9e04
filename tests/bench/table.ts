// A benchmark's rows as a table of plain text, ratios first.

import type { Bench, Row } from './bench.ts';

const cells = ({ what, ratio, medianMs, unit = 'ms' }: Row): readonly string[] => [
  what,
  `${ratio.toFixed(2)} x`,
  `${medianMs.toFixed(3)} ${unit}`,
];

/** The title, the method, and a line for each row. */
export function tableOf({ title, method }: Bench, rows: readonly Row[]): string {
  const lines = rows.map(cells);
  const width = (column: number): number => Math.max(0, ...lines.map((line) => line[column]?.length ?? 0));
  const widths = [0, 1, 2].map(width);
  const text = lines.map((line) =>
    line
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join('  '),
  );
  return [title, method, ...text.map((line) => `  ${line}`)].join('\n');
}
