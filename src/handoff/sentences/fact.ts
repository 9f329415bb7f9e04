// The same thing said of the same place again is one fact, told once with its latest time; what was said against it,
// or otherwise, keeps its own time.

import { type Entry, firstTold } from '../../record/entry.ts';
import { isWithin } from '../../terms/index.ts';
import { isSameMinute, minuteOf, perMembers } from '../../timeline/index.ts';
import { findingPhrase, isBare } from './phrase.ts';

export type FindingEntry = Extract<Entry, { kind: 'finding' }>;

export interface Fact {
  /** all that said it, earliest first; never empty */
  readonly entries: readonly [FindingEntry, ...FindingEntry[]];
  readonly latest: FindingEntry;
  /** whether its time must be told: not at all, as it is, or as the last of several */
  readonly when: 'never' | 'at' | 'last at';
  /** the last that says the opposite of the latest: of all of it, or of each side that was denied by itself since */
  readonly against: readonly FindingEntry[];
  /** what was said later of its whole, or of the place as such, and leaves nothing of it: `no abnormality`, `no facial droop` */
  readonly gone?: FindingEntry;
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

const isTimed = (entry: Entry): boolean => !isSameMinute(entry.at, firstTold(entry));

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

/** A denial of one side takes back nothing of the other; one of all that was found makes older ones needless. */
function lastAgainst(latest: FindingEntry, all: readonly FindingEntry[]): readonly FindingEntry[] {
  const bySide = new Map<FindingEntry['side'], FindingEntry>();
  for (const entry of all.filter((other) => isContrary(latest, other))) {
    if (entry.side === latest.side || entry.side === 'both') bySide.clear();
    bySide.delete(entry.side);
    bySide.set(entry.side, entry);
  }
  return [...bySide.values()];
}

/** The facts of findings that are one finding at one site: none of others says anything of them. */
const factsOfHeap = perMembers<FindingEntry, readonly Fact[]>((all) => {
  const facts = new Map<string, [FindingEntry, ...FindingEntry[]]>();
  const fuller = all.filter((entry) => !isBare(entry));
  for (const entry of all) {
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
  return [...facts.values()].map((entries): Fact => {
    // The fullest words are told, of the latest time.
    const latest = entries.findLast((entry) => !isBare(entry)) ?? entries.at(-1) ?? entries[0];
    return { entries, latest, when: whenOf(entries, all), against: lastAgainst(latest, all) };
  });
});

const isOneSide = (one: FindingEntry, other: FindingEntry): boolean =>
  one.side === other.side || [one.side, other.side].some((side) => side === 'both' || side === null);

/** True where one was found in a part of what the other denies, or the other way round: "abdomen not tender", later a tender quarter of it. */
const isOfWholeAndPart = (one: FindingEntry, other: FindingEntry): boolean =>
  one.finding === other.finding &&
  one.present !== other.present &&
  one.site !== other.site &&
  (isWithin(one.site, other.site) || isWithin(other.site, one.site)) &&
  isOneSide(one, other);

/** True where something was found at the very place that was called normal, or denied without the side it was found on. */
const isOfNormal = (one: FindingEntry, other: FindingEntry): boolean =>
  one.site === other.site &&
  one.present !== other.present &&
  (one.finding === other.finding ||
    [one, other].some(({ finding, present }) => finding === 'abnormality' && !present)) &&
  isOneSide(one, other);

/** True where a denial is of all of the place: one side of it tells nothing of the other. */
const isOfAll = (denial: FindingEntry, found: FindingEntry): boolean =>
  denial.part === undefined &&
  denial.level === undefined &&
  (denial.side === found.side || denial.side === 'both' || denial.side === null);

/** A bleeding that was found controlled flows no more: "no bleeding" later says nothing against it. */
const isControlled = ({ finding, quality }: FindingEntry): boolean =>
  finding === 'bleeding' && (quality ?? []).includes('controlled');

/**
 * True where a later denial leaves nothing of what was found: its place was called normal, or the same was denied of the
 * whole or without a side. "The left leg is normal" may mean the rest of it, so that only the very place counts there.
 */
export const isGone = (found: FindingEntry, denial: FindingEntry): boolean =>
  found.present &&
  !denial.present &&
  Date.parse(denial.at) > Date.parse(found.at) &&
  !isSameMinute(denial.at, found.at) &&
  isOfAll(denial, found) &&
  !isControlled(found) &&
  (denial.site === found.site
    ? isOfNormal(found, denial)
    : denial.finding === found.finding && isWithin(found.site, denial.site));

/** The fact with what was said of its whole later. */
function withGone(fact: Fact, denied: readonly FindingEntry[]): Fact {
  const gone = denied.findLast((denial) => isGone(fact.latest, denial) && !isContrary(fact.latest, denial));
  return gone === undefined ? fact : { ...fact, gone };
}

/** Which of the two came last is told with their times; what was said within one minute is an exception and needs none. */
function timedByPart(fact: Fact, all: readonly Fact[]): Fact {
  const isOtherwise = all.some(
    ({ latest }) =>
      (isOfWholeAndPart(latest, fact.latest) || isOfNormal(latest, fact.latest)) &&
      !isSameMinute(latest.at, fact.latest.at),
  );
  return fact.when === 'never' && isOtherwise ? { ...fact, when: 'at' } : fact;
}

/** The facts that the findings state, in the order each was first said. `findings` stand in the order of time. */
export function factsOf(findings: readonly FindingEntry[]): readonly Fact[] {
  const heaps = new Map<string, [FindingEntry, ...FindingEntry[]]>();
  for (const entry of findings) {
    const key = `${entry.site} ${entry.finding}`;
    const heap = heaps.get(key);
    if (heap === undefined) heaps.set(key, [entry]);
    else heap.push(entry);
  }
  const facts = [...heaps.values()].flatMap(factsOfHeap);
  const denied = findings.filter(({ present }) => !present);
  const byFirst = new Map(facts.map((fact) => [fact.entries[0], withGone(timedByPart(fact, facts), denied)]));
  return findings.flatMap((entry) => byFirst.get(entry) ?? []);
}
