// How much of each burn counts: what was told of it in palms or percent, once, however often it is told.

import { placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { sidesOf } from '../side.ts';
import type { BurnSaid } from './estimate.ts';
import { palmPercentIn } from './palms.ts';
import type { TotalSaid } from './total.ts';

export interface SizedBurns {
  readonly burns: readonly BurnSaid[];
  /** what somebody must settle: two sizes of one place, or a sum that is not the parts' */
  readonly unsettled: readonly string[];
}

/** Said in one breath of one place: "the hand is burned too, full thickness" is told of it twice. */
export const isSameTelling = (a: FindingEntry, b: FindingEntry): boolean =>
  a.heardAt === b.heardAt && a.site === b.site && a.side === b.side;

const toldIn = (entry: FindingEntry): string =>
  (entry.quality ?? []).filter((word) => palmPercentIn(word) !== null).join(', ');

/** The words of an entry that no other burn was heard in: only then is a number in them surely this burn's. */
function alonePercent(entry: FindingEntry, burns: readonly FindingEntry[]): number | null {
  const alone = burns.every((other) => other === entry || other.heard !== entry.heard);
  return alone ? palmPercentIn(entry.heard) : null;
}

/** The very place, or one side of it. */
const isAtSame = (one: FindingEntry, told: FindingEntry): boolean =>
  one.site === told.site && (one.side === told.side || told.side === 'both');

/** With a side that was not said two burns may be on either side, each with a size of its own. */
const isSided = ({ site, side }: FindingEntry): boolean => !placeText(site, side).includes('side not said');

/**
 * The burns with the percent that was told of each. A number told of several at once ("twenty percent, arms and chest")
 * is that of all of them together, and stands with the first, unless it is "each" one's; the chart's areas of what was told so
 * do not count. A burn that is named again ("burn on the left arm cooled") is the same one. What was told `total` stands with the
 * first of those found until then.
 */
export function sizedBurns(
  counted: readonly FindingEntry[],
  all: readonly FindingEntry[],
  total: TotalSaid | null,
): SizedBurns {
  const own = ownSizes(counted, all);
  const isSized = (entry: FindingEntry): boolean =>
    own.some((one) => one.entry === entry && one.told !== null);
  const named = own.map(({ entry, told }): BurnSaid => {
    const again = told === null && all.some((other) => isSized(other) && isAtSame(entry, other));
    return { entry, told: again ? 0 : told };
  });
  const doubled = named.flatMap(({ entry, told }, i) => {
    const later = isSided(entry)
      ? named.slice(i + 1).find((one) => isBothSized(told, one.told) && isAtSame(one.entry, entry))
      : undefined;
    return later === undefined ? [] : [{ entry, told, later }];
  });
  // Of two sizes of one place the larger counts until somebody says which holds.
  const dropped = new Set(
    doubled.map(({ entry, told, later }) => ((told ?? 0) > (later.told ?? 0) ? later.entry : entry)),
  );
  const burns = named.map((one) => (dropped.has(one.entry) ? { ...one, told: 0 } : one));
  const unsettled = doubled.flatMap(({ entry, told, later }) =>
    told === later.told
      ? []
      : [`which size holds: ${placeText(entry.site, entry.side)}, ${told} % or ${later.told} %`],
  );
  if (total === null) return { burns, unsettled };
  const within = burns.filter(({ entry }) => Date.parse(entry.heardAt) <= total.heardAt);
  const parts = within.reduce<number | null>(
    (sum, { told }) => (sum === null || told === null ? null : sum + told),
    0,
  );
  const [first] = within;
  return {
    burns: burns.map((one) =>
      within.includes(one) ? { ...one, told: one === first ? total.percent : 0 } : one,
    ),
    unsettled:
      parts === null || parts === total.percent || within.length === 0
        ? unsettled
        : [...unsettled, `which holds: ${total.percent} % told in all, or ${parts} % told of the parts`],
  };
}

const isBothSized = (one: number | null, other: number | null): boolean =>
  one !== null && one > 0 && other !== null && other > 0;

function ownSizes(counted: readonly FindingEntry[], all: readonly FindingEntry[]): readonly BurnSaid[] {
  const given = new Set<string>();
  return counted.map((entry) => {
    const words = toldIn(entry);
    if (words !== '') {
      const sum = words.split(', ').reduce((all, word) => all + (palmPercentIn(word) ?? 0), 0);
      if (/\beach\b/.test(words)) return { entry, told: sum * sidesOf(entry.site, entry.side).length };
      const key = `${entry.heardAt} ${words}`;
      const first = !given.has(key);
      given.add(key);
      return { entry, told: first ? sum : 0 };
    }
    const beside = all.some((other) => isSameTelling(other, entry) && toldIn(other) !== '');
    return { entry, told: beside ? 0 : alonePercent(entry, all) };
  });
}
