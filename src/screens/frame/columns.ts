// How many panels stand beside each other, by the width of the window.

import { type Signal, signal } from '@preact/signals';
import type { Columns } from './panels.ts';

const TWO = '(min-width: 46rem)';
const THREE = '(min-width: 75rem)';

/** Follows the window's width. */
export function createColumns(): Signal<Columns> {
  const [two, three] = [matchMedia(TWO), matchMedia(THREE)];
  const read = (): Columns => (three.matches ? 3 : two.matches ? 2 : 1);
  const columns = signal(read());
  for (const query of [two, three]) query.addEventListener('change', () => (columns.value = read()));
  return columns;
}
