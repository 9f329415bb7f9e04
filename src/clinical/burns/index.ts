// Promises the burned share of the body by the rule of nines, by Lund and Browder's chart for the age, and by palms.

import { ageOf } from '../age.ts';
import type { Chart } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { sourceText } from '../source.ts';
import { LUND_BROWDER_SOURCE, lundBrowder, NINES_SOURCE, RULE_OF_NINES } from './charts.ts';
import { type Depth, depthIn } from './depth.ts';
import { type BurnSaid, type Estimate, estimate } from './estimate.ts';
import { PALM_SOURCE, palmPercentIn } from './palms.ts';
import type { Method } from './region.ts';

export interface BurnRegion {
  readonly place: string;
  readonly depth: Depth;
  /** false for superficial redness, which no method counts */
  readonly counted: boolean;
  readonly entry: string;
}

export interface Burns extends Reckoned {
  /** by `method`, over the burns that a chart or palms can place; null where none can */
  readonly percent: number | null;
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

/** Of a burn told twice in one breath ("the hand is burned too, full thickness") the depth said once holds for both. */
function depthOf(entry: FindingEntry, all: readonly FindingEntry[]): Depth {
  const own = ownDepth(entry);
  if (own !== 'not said') return own;
  const told = all.find(
    (other) =>
      other.heardAt === entry.heardAt &&
      other.site === entry.site &&
      other.side === entry.side &&
      ownDepth(other) !== 'not said',
  );
  return told === undefined ? own : ownDepth(told);
}

/** The words of an entry that no other burn was heard in: only then is a number in them surely this burn's. */
function toldPercent(entry: FindingEntry, burns: readonly FindingEntry[]): number | null {
  const own = palmPercentIn((entry.quality ?? []).join(' '));
  if (own !== null) return own;
  const alone = burns.every((other) => other === entry || other.heard !== entry.heard);
  return alone ? palmPercentIn(entry.heard) : null;
}

/** The burns as told; null where no burn was found. Burns that were not said to be superficial count. */
export function burnsOf(chart: Chart): Burns | null {
  const all = chart.found('burn');
  if (all.length === 0) return null;
  const { years, entries } = chart.ask(ageOf);
  const counted = all.filter((entry) => depthOf(entry, all) !== 'superficial');
  const burns: readonly BurnSaid[] = counted.map((entry) => ({ entry, told: toldPercent(entry, all) }));
  const nines = estimate(burns, RULE_OF_NINES, 'rule-of-nines');
  const browder = years === null ? null : estimate(burns, lundBrowder(years), 'lund-browder');
  const child = years !== null && years < NINES_FROM_YEARS;
  const lead = child && browder !== null ? browder : nines;
  const nonePlaced = counted.length > 0 && lead.unplaced.length === counted.length;
  const estimates = [nines, ...(browder === null ? [] : [browder])];
  const differ = browder !== null && browder.percent !== nines.percent;
  const missing = [
    ...(years === null ? ['age, for the chart by age'] : []),
    ...lead.unplaced.map((entry) => `how many palms at: ${placeText(entry.site, entry.side)}`),
    ...counted
      .filter((entry) => depthOf(entry, all) === 'not said')
      .map((entry) => `depth at: ${placeText(entry.site, entry.side)}`),
    ...counted
      .filter((entry) => placeText(entry.site, entry.side).includes('side not said'))
      .map(() => 'side'),
  ];
  const atLeast = lead.unplaced.length > 0 ? 'at least ' : '';
  const figures = (differ ? estimates : [lead])
    .map((each) => `${each.percent} % by ${NAMES[each.method]}`)
    .join(', ');
  return {
    ...reckoned([...all, ...entries], child ? LUND_BROWDER_SOURCE : NINES_SOURCE, missing),
    source: [
      NINES_SOURCE,
      ...(browder === null ? [] : [LUND_BROWDER_SOURCE]),
      ...(burns.some((burn) => burn.told !== null) ? [PALM_SOURCE] : []),
    ]
      .map(sourceText)
      .join('; '),
    percent: nonePlaced ? null : lead.percent,
    method: lead.method,
    estimates: estimates.map(({ method, percent }) => ({ method, percent })),
    differ,
    regions: all.map((entry) => ({
      place: placeText(entry.site, entry.side),
      depth: depthOf(entry, all),
      counted: depthOf(entry, all) !== 'superficial',
      entry: entry.id,
    })),
    text: nonePlaced ? 'burns: size not known' : `burns: ${atLeast}${figures}`,
  };
}
