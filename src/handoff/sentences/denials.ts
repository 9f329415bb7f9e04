// What was denied alike of several places stands in one sentence that names each of them; no place is added.

import { isPaired, type Side } from '../../terms/index.ts';
import type { Day } from '../../timeline/index.ts';
import { deniedTime, deniedWords, findingTold } from './finding.ts';
import type { FactGroup } from './groups.ts';
import { isAtHome } from './home.ts';
import { or } from './list.ts';
import { noPlace, placeName } from './place.ts';
import type { Told } from './told.ts';
import { unspokenOfFact } from './trust.ts';

/** More places than these in one sentence cannot be kept in mind; common practice, no source. */
const MOST_PLACES = 6;

const ends = (group: FactGroup): string => {
  const [{ part, level, side, site }] = group.entries;
  return [part ?? '', level ?? '', side === null && isPaired(site) ? site : ''].join('|');
};

/** Only groups with the same key may share a sentence; a place that needs words of its own keeps its sentence. */
function shareKey(group: FactGroup, day: Day): string | null {
  const [first] = group.entries;
  if (first.site === 'back' || ends(group) !== '||' || isAtHome(first)) return null;
  return [first.state, slotsOf(group), deniedWords(group), deniedTime(group, day)].join('|');
}

/** What nobody spoke of a group of denials: the same of each of its facts. */
const slotsOf = ({ facts: [first] }: FactGroup): readonly string[] => unspokenOfFact(first.entries);

const sharedSide = (groups: readonly FactGroup[]): Side | null => {
  const [first] = groups;
  const side = first?.entries[0].side ?? null;
  const alike = groups.every(({ entries: [one] }) => one.side === side && isPaired(one.site));
  return alike && side !== 'midline' ? side : null;
};

/** The places under one "no": a side that they share is said once, as a person would: `the right elbow or wrist`. */
function places(groups: readonly FactGroup[]): string {
  const side = sharedSide(groups);
  const names = groups.map(({ entries: [first] }) => noPlace(first));
  const opening = side === 'both' ? 'either ' : `the ${side} `;
  if (side === null || !names.every((name) => name.startsWith(opening) && !/ of | \(/.test(name)))
    return or(names.map((name, index) => (index > 0 && side === null ? name.replace(/^the /, '') : name)));
  return `${opening}${or(names.map((name) => name.slice(opening.length)))}`;
}

function shared(groups: readonly [FactGroup, ...FactGroup[]], day: Day): Told {
  const [first] = groups;
  if (groups.length === 1) return findingTold(first, day);
  return {
    words: `No ${deniedWords(first)} of ${places(groups)}${deniedTime(first, day)}`,
    entries: groups.flatMap(({ entries }) => entries),
    slots: slotsOf(first),
    clauses: groups.map((group) => findingTold(group, day)),
  };
}

/** The denials of groups of absent findings, in the order of their first place. */
export function deniedTold(groups: readonly FactGroup[], day: Day): readonly Told[] {
  const sets: [FactGroup, ...FactGroup[]][] = [];
  const open = new Map<string, [FactGroup, ...FactGroup[]]>();
  for (const group of groups) {
    const key = shareKey(group, day);
    const set = key === null ? undefined : open.get(key);
    if (set !== undefined && set.length < MOST_PLACES) {
      set.push(group);
      continue;
    }
    const fresh: [FactGroup, ...FactGroup[]] = [group];
    sets.push(fresh);
    if (key !== null) open.set(key, fresh);
  }
  return sets.map((set) => shared(set, day));
}

/** `left knee: no swelling`: a denial as it stands against what was found on the other side. */
export function comparedTold(group: FactGroup, day: Day): Told {
  const [first] = group.entries;
  return {
    words: `${placeName(first)}: no ${deniedWords(group)}${deniedTime(group, day)}`,
    entries: group.entries,
    slots: slotsOf(group),
  };
}
