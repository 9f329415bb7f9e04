// How a talk is played: which of its utterances are due after some time at some speed.

import type { HeardUtterance } from '../../record/index.ts';

/** Times the speed of life; `all` says everything at once. */
export type Pace = 1 | 10 | 60 | 'all';
export const PACES: readonly Pace[] = [1, 10, 60, 'all'];

export const PACE_NAMES: Readonly<Record<Pace, string>> = {
  1: '1×',
  10: '10×',
  60: '60×',
  all: 'All at once',
};

/** The talk's own time after `passed` more milliseconds of the wall clock; all of it at once ends at the last word. */
export function positionAfter(position: number, passed: number, pace: Pace, last: number): number {
  return pace === 'all' ? Math.max(position, last) : Math.min(last, position + passed * pace);
}

/** The utterances from `from` (an index) on that are due at the talk's own time `position`, ms since its start. */
export function due(
  utterances: readonly HeardUtterance[],
  startedAt: number,
  from: number,
  position: number,
): readonly HeardUtterance[] {
  const rest = utterances.slice(from);
  const late = rest.findIndex(({ heardAt }) => heardAt - startedAt > position);
  return late < 0 ? rest : rest.slice(0, late);
}

/** `3:07` of the talk's own time. */
export const clockOf = (ms: number): string =>
  `${Math.floor(ms / 60_000)}:${String(Math.floor(ms / 1000) % 60).padStart(2, '0')}`;
