// What fits no other part of a report is still in it: words that were not placed, marked moments, and open doubts.

import { type Entry, standing, stands } from '../../record/entry.ts';
import { clock, type Day, inOrder } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { tidy } from './list.ts';
import { joined, type Told, written } from './told.ts';
import { markOf } from './trust.ts';

/** `As said at 14:20: “…”.` for each note, and `Marked at 14:22: “…”.` for each mark. */
export function keptSentences(entries: readonly Entry[], day: Day): readonly Sentence[] {
  const ordered = inOrder(entries);
  const notes = standing(ordered, 'note').map((entry) => ({ entry, word: 'As said' }));
  const marks = standing(ordered, 'mark').map((entry) => ({ entry, word: 'Marked' }));
  return [...notes, ...marks].map(({ entry, word }) => ({
    text: `${word} at ${clock(entry.at, day)}: “${tidy(entry.text)}”${markOf([entry])}.`,
    entries: [entry.id],
  }));
}

/** What a person must settle before an entry that nobody has confirmed is relied on. */
export const doubtSentences = (entries: readonly Entry[]): readonly Sentence[] =>
  entries
    .filter((entry) => stands(entry) && entry.state === 'heard')
    .flatMap((entry) =>
      (entry.doubt ?? []).map((doubt) => ({
        text: `To settle, heard as “${tidy(entry.heard)}”: ${tidy(doubt)} (unconfirmed).`,
        entries: [entry.id],
      })),
    );

type KeptEntry = Extract<Entry, { kind: 'note' | 'mark' }>;

const keptTold = (entry: KeptEntry, day: Day, first: boolean): Told => ({
  words: `${first ? `${entry.kind === 'note' ? 'As said' : 'Marked'} at ${clock(entry.at, day)}: ` : ''}“${tidy(entry.text)}”`,
  entries: [entry],
});

/** The same, marks first and then notes; those of one minute that are confirmed alike share a line. */
export function keptTogether(entries: readonly Entry[], day: Day): readonly Told[] {
  const ordered = inOrder(entries);
  const all: readonly KeptEntry[] = [...standing(ordered, 'mark'), ...standing(ordered, 'note')];
  const minutes = new Map<string, [KeptEntry, ...KeptEntry[]]>();
  for (const entry of all) {
    const key = `${entry.kind}|${entry.state}|${clock(entry.at, day)}`;
    const minute = minutes.get(key);
    if (minute === undefined) minutes.set(key, [entry]);
    else minute.push(entry);
  }
  return [...minutes.values()].map(([first, ...others]) =>
    joined([keptTold(first, day, true), ...others.map((entry) => keptTold(entry, day, false))]),
  );
}

export const keptLines = (entries: readonly Entry[], day: Day): readonly Sentence[] =>
  keptTogether(entries, day).map(written);
