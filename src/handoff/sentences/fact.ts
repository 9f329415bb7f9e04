// The same thing said of the same place again is one fact, told once with its latest time; what was said against it,
// or otherwise, keeps its own time.

import type { Entry } from '../../record/entry.ts';
import { isSameMinute, minuteOf } from '../../timeline/index.ts';
import { findingPhrase, isBare } from './phrase.ts';

export type FindingEntry = Extract<Entry, { kind: 'finding' }>;

export interface Fact {
  /** all that said it, earliest first; never empty */
  readonly entries: readonly [FindingEntry, ...FindingEntry[]];
  readonly latest: FindingEntry;
  /** whether its time must be told: not at all, as it is, or as the last of several */
  readonly when: 'never' | 'at' | 'last at';
}

/** True where two statements speak of one finding at one place, whatever else they say of it. */
const speaksOfSame = (one: FindingEntry, other: FindingEntry): boolean =>
  one.site === other.site &&
  one.finding === other.finding &&
  (one.side === other.side || one.side === 'both' || other.side === 'both') &&
  (one.part === undefined || other.part === undefined || `${one.part}` === `${other.part}`) &&
  (one.level === undefined || other.level === undefined || one.level === other.level);

/** True where one statement denies what the other found. */
export const isContrary = (one: FindingEntry, other: FindingEntry): boolean =>
  one.present !== other.present && speaksOfSame(one, other);

const samePlace = (one: FindingEntry, other: FindingEntry): boolean =>
  one.side === other.side && `${one.part}` === `${other.part}` && one.level === other.level;

/** True where a bare "bleeding" was said within the minute of an "active bleeding", the fuller one: the second tells it. */
const isToldIn = (bare: FindingEntry, fuller: FindingEntry): boolean =>
  bare.present &&
  fuller.present &&
  (fuller.count === undefined || fuller.count === 1) &&
  bare.state === fuller.state &&
  speaksOfSame(bare, fuller) &&
  samePlace(bare, fuller) &&
  isSameMinute(bare.at, fuller.at);

const isTimed = (entry: Entry): boolean => !isSameMinute(entry.at, entry.heardAt);

function whenOf(entries: Fact['entries'], all: readonly FindingEntry[]): Fact['when'] {
  if (entries.some(({ at }) => !isSameMinute(at, entries[0].at))) return 'last at';
  const otherwise = all.some(
    (other) =>
      !entries.includes(other) &&
      entries.some(
        (entry) =>
          isContrary(entry, other) ||
          (speaksOfSame(entry, other) && samePlace(entry, other) && !isSameMinute(other.at, entry.at)),
      ),
  );
  return otherwise || entries.some(isTimed) ? 'at' : 'never';
}

interface Heap {
  readonly all: FindingEntry[];
  /** those that say more than the finding */
  readonly fuller: FindingEntry[];
}

/** The findings by site and finding: none of one heap says anything of another, and a long exam has many. */
function heapsOf(findings: readonly FindingEntry[]): (entry: FindingEntry) => Heap {
  const heaps = new Map<string, Heap>();
  const keyOf = ({ site, finding }: FindingEntry): string => `${site} ${finding}`;
  for (const entry of findings) {
    const heap = heaps.get(keyOf(entry)) ?? { all: [], fuller: [] };
    heaps.set(keyOf(entry), heap);
    heap.all.push(entry);
    if (!isBare(entry)) heap.fuller.push(entry);
  }
  return (entry) => heaps.get(keyOf(entry)) ?? { all: [], fuller: [] };
}

/** The facts that the findings state, in the order each was first said. `findings` stand in the order of time. */
export function factsOf(findings: readonly FindingEntry[]): readonly Fact[] {
  const facts = new Map<string, [FindingEntry, ...FindingEntry[]]>();
  const heapOf = heapsOf(findings);
  for (const entry of findings) {
    const { all, fuller } = heapOf(entry);
    const teller = (isBare(entry) ? fuller.find((other) => isToldIn(entry, other)) : undefined) ?? entry;
    const denied = all.some((other) => isContrary(other, teller));
    const { site, side, part, level, present, state } = teller;
    const minute = denied ? minuteOf(teller.at) : '';
    const key = [site, side, part ?? '', level ?? '', present, state, findingPhrase(teller), minute].join(
      '|',
    );
    const fact = facts.get(key);
    if (fact === undefined) facts.set(key, [entry]);
    else fact.push(entry);
  }
  return [...facts.values()].map((entries) => {
    // The fullest words are told, of the latest time.
    const latest = entries.findLast((entry) => !isBare(entry)) ?? entries.at(-1) ?? entries[0];
    return { entries, latest, when: whenOf(entries, heapOf(latest).all) };
  });
}
