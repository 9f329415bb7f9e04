// Finds records by the words a person remembers: a name, a label, a place, a day.

import type { Shown } from './summary.ts';
import { whoIs } from './who.ts';

const MONTHS = 'january february march april may june july august september october november december'.split(
  ' ',
);

/** `2026-05-03 3 may 2026`, by the day at the place where it began. */
function dayWords(iso: string): string {
  const [year, month, day] = iso.slice(0, 10).split('-');
  return `${iso.slice(0, 10)} ${Number(day)} ${MONTHS[Number(month) - 1] ?? ''} ${year}`;
}

/** Without accents, in small letters. */
export const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** The words that a record is known by, in plain small letters. */
export const wordsOf = ({ facts, summary }: Shown): readonly string[] =>
  plain(`${whoIs(summary)} ${summary.place} ${facts.title} ${dayWords(facts.startedAt)}`).split(/[\s,]+/);

/** True where every word that was typed begins a word of the record. */
export function matches(shown: Shown, typed: string): boolean {
  const words = wordsOf(shown);
  return plain(typed)
    .split(/[\s,]+/)
    .filter((word) => word !== '')
    .every((word) => words.some((one) => one.startsWith(word)));
}

export interface Incident {
  readonly id: string;
  /** the first patient first */
  readonly records: readonly Shown[];
}

/** The records by incident, the one with the latest start first. */
export function byIncident(records: readonly Shown[]): readonly Incident[] {
  const incidents = new Map<string, Shown[]>();
  for (const one of records.toSorted(
    (a, b) => Date.parse(b.facts.startedAt) - Date.parse(a.facts.startedAt),
  )) {
    const { incident } = one.summary;
    incidents.set(incident, [...(incidents.get(incident) ?? []), one]);
  }
  return [...incidents].map(([id, found]) => ({
    id,
    records: found.toSorted((a, b) => a.summary.patient - b.summary.patient),
  }));
}
