// Promises the burned share of the body by the rule of nines, by Lund and Browder's chart for the age, and by palms.

import { ageOf } from '../age.ts';
import { type Chart, clockText } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { sourceText } from '../source.ts';
import { LUND_BROWDER_SOURCE, lundBrowder, NINES_SOURCE, RULE_OF_NINES } from './charts.ts';
import { deniedBurns } from './denied.ts';
import { type Depth, depthIn } from './depth.ts';
import { type Estimate, estimate } from './estimate.ts';
import { PALM_SOURCE } from './palms.ts';
import type { Method } from './region.ts';
import { isSameTelling, sizedBurns } from './sized.ts';
import { totalSaid } from './total.ts';

export interface BurnRegion {
  readonly place: string;
  readonly depth: Depth;
  /** false for superficial redness, which no method counts */
  readonly counted: boolean;
  readonly entry: string;
}

export interface Burns extends Reckoned {
  /** by `method`, over the burns that a chart or palms can place; null where none can, and where one was denied since */
  readonly percent: number | null;
  /** burns that were denied after they were found, with the share of all that was found; null where nothing stands against it */
  readonly denied: {
    readonly percent: number | null;
    /** `a burn of the right arm was denied at 09:15`, one each */
    readonly words: readonly string[];
    /** ids of the denials */
    readonly by: readonly string[];
  } | null;
  readonly method: Method;
  /** both methods where the age is known, else the rule of nines alone */
  readonly estimates: readonly Pick<Estimate, 'method' | 'percent'>[];
  readonly differ: boolean;
  readonly regions: readonly BurnRegion[];
  readonly text: string;
}

/** The rule of nines holds for adult proportions; under this age the chart for the age leads. Common practice. */
const NINES_FROM_YEARS = 15;

const NAMES: Readonly<Record<Method, string>> = {
  'rule-of-nines': 'rule of nines',
  'lund-browder': 'Lund-Browder',
};

const ownDepth = (entry: FindingEntry): Depth => depthIn(entry.quality ?? []);

/** The depth said once holds for all that was told of the place with it: "burned, the skin is white and leathery". */
function depthOf(entry: FindingEntry, told: readonly FindingEntry[]): Depth {
  const own = ownDepth(entry);
  if (own !== 'not said') return own;
  const beside = told.filter((other) => isSameTelling(other, entry)).map(ownDepth);
  // A red skin beside a burn may be its rim: only words of depth make it superficial.
  return DEEPEST.find((depth) => beside.includes(depth)) ?? own;
}

const DEEPEST: readonly Depth[] = ['full', 'partial'];

/** The burns as told; null where no burn was found. Burns that were not said to be superficial count. */
export function burnsOf(chart: Chart): Burns | null {
  const all = chart.found('burn');
  if (all.length === 0) return null;
  const { years, entries } = chart.ask(ageOf);
  // The look of the skin may be told as a finding of its own.
  const looks = chart.found('discoloration');
  const depth = (entry: FindingEntry): Depth => depthOf(entry, [...all, ...looks]);
  const counted = all.filter((entry) => depth(entry) !== 'superficial');
  const total = totalSaid(chart);
  const { burns, unsettled } = sizedBurns(counted, all, total);
  const nines = estimate(burns, RULE_OF_NINES, 'rule-of-nines');
  const browder = years === null ? null : estimate(burns, lundBrowder(years), 'lund-browder');
  const child = years !== null && years < NINES_FROM_YEARS;
  const lead = child && browder !== null ? browder : nines;
  const denied = deniedBurns(chart, counted);
  const words = [
    ...new Set(
      denied.map(
        ({ denial }) =>
          `a burn of the ${placeText(denial.site, denial.side)} was denied at ${clockText(denial)}`,
      ),
    ),
  ];
  const nonePlaced = counted.length > 0 && lead.unplaced.length === counted.length;
  const estimates = [nines, ...(browder === null ? [] : [browder])];
  const differ = browder !== null && browder.percent !== nines.percent;
  const missing = [
    ...unsettled,
    ...denied.map(({ burn }) => `whether it is burned: ${placeText(burn.site, burn.side)}`),
    ...(years === null ? ['age, for the chart by age'] : []),
    ...lead.unplaced.map((entry) => `how many palms at: ${placeText(entry.site, entry.side)}`),
    ...counted
      .filter((entry) => depth(entry) === 'not said')
      .map((entry) => `depth at: ${placeText(entry.site, entry.side)}`),
    ...counted
      .filter((entry) => placeText(entry.site, entry.side).includes('side not said'))
      .map(() => 'side'),
  ];
  const atLeast = lead.unplaced.length > 0 ? 'at least ' : '';
  const allTold = burns.length > 0 && burns.every((burn) => burn.told !== null);
  const figures = allTold
    ? `${lead.percent} % as told in ${total === null ? 'palms or percent' : 'all'}`
    : (differ ? estimates : [lead]).map((each) => `${each.percent} % by ${NAMES[each.method]}`).join(', ');
  return {
    ...reckoned(
      [...all, ...denied.map(({ denial }) => denial), ...entries, ...(total === null ? [] : [total.by])],
      child ? LUND_BROWDER_SOURCE : NINES_SOURCE,
      missing,
    ),
    source: [
      NINES_SOURCE,
      ...(browder === null ? [] : [LUND_BROWDER_SOURCE]),
      ...(burns.some((burn) => burn.told !== null) ? [PALM_SOURCE] : []),
    ]
      .map(sourceText)
      .join('; '),
    percent: nonePlaced || denied.length > 0 ? null : lead.percent,
    denied:
      denied.length === 0
        ? null
        : {
            percent: nonePlaced ? null : lead.percent,
            words,
            by: denied.map(({ denial }) => denial.id),
          },
    method: lead.method,
    estimates: estimates.map(({ method, percent }) => ({ method, percent })),
    differ,
    regions: all.map((entry) => ({
      place: placeText(entry.site, entry.side),
      depth: depth(entry),
      counted: depth(entry) !== 'superficial',
      entry: entry.id,
    })),
    text: [nonePlaced ? 'burns: size not known' : `burns: ${atLeast}${figures}`, ...words].join('; '),
  };
}
