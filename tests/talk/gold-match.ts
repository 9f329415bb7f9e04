// Decides whether the standing entries of a record meet a case of the gold sets, by the rules in this folder's README.

import { type Entry, stands } from '../../src/record/entry.ts';

export type PartialEntry = Readonly<Record<string, unknown>>;

export interface GoldCase {
  readonly id: string;
  readonly about: string;
  readonly talk: readonly string[];
  readonly expect: readonly PartialEntry[];
  readonly forbid?: readonly PartialEntry[];
}

export interface Verdict {
  readonly missing: readonly PartialEntry[];
  readonly unwanted: readonly PartialEntry[];
}

// The contract leaves the rounding of converted units free, glucose to the whole milligram.
const allowance = (key: string): number => (key === 'mgPerDl' ? 0.5 : 0.05);

const isRecord = (it: unknown): it is Record<string, unknown> =>
  typeof it === 'object' && it !== null && !Array.isArray(it);

function agrees(key: string, found: unknown, wanted: unknown): boolean {
  if (typeof found === 'string' && typeof wanted === 'string') {
    if (key === 'at') return Date.parse(found) === Date.parse(wanted);
    return key === 'text' ? found.toLowerCase().includes(wanted.toLowerCase()) : found === wanted;
  }
  if (typeof found === 'number' && typeof wanted === 'number') {
    return Math.abs(found - wanted) <= allowance(key) + 1e-9;
  }
  if (Array.isArray(found) && Array.isArray(wanted)) {
    return wanted.every((member) => found.some((other) => agrees(key, other, member)));
  }
  return isRecord(found) && isRecord(wanted) ? holds(found, wanted) : found === wanted;
}

function holds(found: PartialEntry, wanted: PartialEntry): boolean {
  return Object.entries(wanted).every(([key, value]) => agrees(key, found[key], value));
}

const some = (entries: readonly Entry[], wanted: PartialEntry): boolean =>
  entries.some((entry) => holds({ ...entry }, wanted));

const isExpected = (entries: readonly Entry[], wanted: PartialEntry): boolean =>
  some(entries, wanted) ||
  (wanted.side === 'both' &&
    (['left', 'right'] as const).every((side) => some(entries, { ...wanted, side })));

/** What a case expects and the record lacks, and what it forbids and the record holds; both empty where it passes. */
export function judge(gold: GoldCase, entries: readonly Entry[]): Verdict {
  const standing = entries.filter(stands);
  return {
    missing: gold.expect.filter((wanted) => !isExpected(standing, wanted)),
    unwanted: (gold.forbid ?? []).filter((unwanted) => some(standing, unwanted)),
  };
}
