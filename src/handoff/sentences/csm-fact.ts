// Circulation, sensation or motion of one limb's end as one fact: said again alike it is told once, with its latest time.

import { type Entry, firstTold, standing } from '../../record/entry.ts';
import { inOrder, minuteOf } from '../../timeline/index.ts';
import { unspokenOf, unspokenOfFact } from './trust.ts';

export type CsmEntry = Extract<Entry, { kind: 'csm' }>;

export interface CsmFact {
  /** all that said it, earliest first; never empty */
  readonly entries: readonly [CsmEntry, ...CsmEntry[]];
  readonly latest: CsmEntry;
  /** `radial pulse present`, `warm`: what was said of it, each with the mark of what was not spoken of it alone */
  readonly details: readonly string[];
  /** true where its time must be told */
  readonly timed: boolean;
}

/** What was said of it besides whether it is intact. */
export function csmDetails(entry: CsmEntry): readonly string[] {
  const pulse = entry.pulse?.replace('-', ' ');
  return [
    pulse === undefined ? undefined : entry.present ? `${pulse} pulse present` : `no ${pulse} pulse`,
    entry.capRefillSeconds === undefined ? undefined : `capillary refill ${entry.capRefillSeconds} seconds`,
    entry.warmth,
    typeof entry.strength === 'number' ? `strength ${entry.strength} of 5` : undefined,
    typeof entry.strength === 'string' ? `strength ${entry.strength}` : undefined,
    ...(entry.quality ?? []),
  ].filter((word) => word !== undefined);
}

const same = (one: CsmEntry, other: CsmEntry): boolean =>
  one.site === other.site &&
  one.side === other.side &&
  one.digit === other.digit &&
  one.aspect === other.aspect;

/** Alike in all that was said; what differs in words stays together only within one minute. */
function keyOf(entry: CsmEntry, all: readonly CsmEntry[]): string {
  const { site, side, digit, aspect, present, state } = entry;
  const words = csmDetails(entry).join();
  const alike = all
    .filter((other) => same(entry, other))
    .every((other) => other.present === present && csmDetails(other).join() === words);
  return [site, side, digit ?? '', aspect, present, state, alike ? '' : minuteOf(entry.at)].join('|');
}

function detailsIn(entries: readonly CsmEntry[]): readonly string[] {
  const shared = unspokenOfFact(entries);
  return entries.flatMap((entry) => {
    const own = unspokenOf(entry).filter((slot) => !shared.includes(slot));
    const mark = own.length === 0 ? '' : ` (${own.join('; ')})`;
    return csmDetails(entry).map((detail) => `${detail}${mark}`);
  });
}

/** The facts of limbs' ends, in the order each was first said. */
export function csmFacts(entries: readonly Entry[]): readonly CsmFact[] {
  const all = standing(inOrder(entries), 'csm');
  const facts = new Map<string, [CsmEntry, ...CsmEntry[]]>();
  for (const entry of all) {
    const key = keyOf(entry, all);
    const fact = facts.get(key);
    if (fact === undefined) facts.set(key, [entry]);
    else fact.push(entry);
  }
  return [...facts.values()].map((said) => {
    const minutes = new Set(all.filter((entry) => same(entry, said[0])).map(({ at }) => minuteOf(at)));
    return {
      entries: said,
      latest: said.at(-1) ?? said[0],
      details: [...new Set(detailsIn(said))],
      timed: minutes.size > 1 || said.some((entry) => minuteOf(entry.at) !== minuteOf(firstTold(entry))),
    };
  });
}
