// What is remembered from one entry to the next changes no word: every report is as if it were made afresh.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RADIO_STEPS, radio, radioDetails, soap } from '../../src/handoff/index.ts';
import { chunks, countWords, wordsInChunks } from '../../src/handoff/radio/chunks.ts';
import { scriptOf } from '../../src/handoff/radio/script.ts';
import type { Entry } from '../../src/record/entry.ts';
import { groupEntries } from '../../src/screens/entries/by-region.ts';
import { perMembers, timelineLines } from '../../src/timeline/index.ts';
import { record } from './arbitrary.ts';
import { input, STARTED } from './made-up.ts';

/** The record as it grows, and as a hand then confirms or strikes an entry of it here and there. */
function* growing(entries: readonly Entry[]): Generator<readonly Entry[]> {
  for (let many = 1; many <= entries.length; many += 1) yield entries.slice(0, many);
  for (const state of ['confirmed', 'struck'] as const) {
    const changed = entries.map((entry, index) =>
      index % 3 === 0 && entry.state !== 'replaced' ? { ...entry, state } : entry,
    );
    yield changed;
  }
}

const reports = (entries: readonly Entry[]) => {
  const report = input(entries);
  return {
    radio: radio(report),
    details: radioDetails(report),
    soap: soap(report),
    timeline: timelineLines({ startedAt: STARTED, entries }),
    groups: groupEntries(entries),
  };
};

test('reports of a growing record are word for word those of the same entries seen for the first time', () => {
  fc.assert(
    fc.property(record, (entries) => {
      for (const now of growing(entries)) expect(reports(now)).toEqual(reports(structuredClone(now)));
    }),
    { numRuns: 25 },
  );
}, 60_000);

test('a radio report that was worked out in steps before it was asked for is the same', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const stepped = input(entries);
      for (const step of RADIO_STEPS) step(stepped);
      expect(radio(stepped)).toEqual(radio(input(structuredClone(entries))));
    }),
    { numRuns: 25 },
  );
}, 60_000);

test('the words of a report are counted as they are written out', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const { said, words } = scriptOf(input(entries));
      const written = chunks(said).reduce((sum, { text }) => sum + countWords(text), 0);
      expect([words, wordsInChunks(said)]).toEqual([written, written]);
    }),
    { numRuns: 100 },
  );
}, 60_000);

test('a line of the timeline stays the same object while it says the same, and another does not', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const [before, after] = [1, 0].map((less) =>
        timelineLines({ startedAt: STARTED, entries: entries.slice(0, entries.length - less) }),
      );
      for (const line of after ?? []) {
        const same = before?.find((one) => one === line);
        const alike = before?.find((one) => JSON.stringify(one) === JSON.stringify(line));
        if (line.state !== 'gap') expect(same === undefined).toBe(alike === undefined);
      }
    }),
    { numRuns: 25 },
  );
}, 60_000);

test('what is worked out of some of a list is worked out again only where one of them is another', () => {
  let worked = 0;
  const sizes = perMembers<{ readonly of: string }, number>((members) => {
    worked += 1;
    return members.length;
  });
  const [one, two, three] = [{ of: 'a' }, { of: 'b' }, { of: 'c' }];
  expect([sizes([one, two]), sizes([one, two]), worked]).toEqual([2, 2, 1]);
  expect([sizes([one, two, three]), sizes([one, three]), sizes([two, one]), worked]).toEqual([3, 2, 2, 4]);
  expect([sizes([one, { of: 'b' }]), worked]).toEqual([2, 5]);
});
