// The same thing said to be so and not so: changed, or misheard?

import { type Aspect, type Finding, isPaired, type Part, type Site } from '../../terms/index.ts';
import { type Chart, clockText, type EntryOf } from '../chart.ts';
import { findingName } from '../finding-name.ts';
import { isImpaired, limbWord, measuresMeet } from '../limb-end.ts';
import { placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { sidesOf } from '../side.ts';
import { type Conflict, conflictOf } from './conflict.ts';

const partsMeet = (a: readonly Part[] | undefined, b: readonly Part[] | undefined): boolean =>
  a === undefined || b === undefined || a.some((part) => b.includes(part));

const levelsMeet = (a: string | undefined, b: string | undefined): boolean =>
  a === undefined || b === undefined || a === b;

/** One side at least is meant by both; what is said of a whole unpaired site meets what is said of half of it. */
function sameSide(a: FindingEntry | EntryOf<'csm'>, b: FindingEntry | EntryOf<'csm'>): boolean {
  const [one, other] = [sidesOf(a.site, a.side), sidesOf(b.site, b.side)];
  return (
    one.some((side) => other.includes(side)) ||
    (!isPaired(a.site) && (one.includes(null) || other.includes(null)))
  );
}

const meet = (a: FindingEntry, b: FindingEntry): boolean =>
  a.site === b.site && sameSide(a, b) && partsMeet(a.part, b.part) && levelsMeet(a.level, b.level);

/** The latest entry against the last one before it that says the opposite; an answer in between settles the older. */
function turned<E extends FindingEntry | EntryOf<'csm'>>(
  entries: readonly E[],
  same: (a: E, b: E) => boolean,
): readonly (readonly [E, E])[] {
  return entries.flatMap((later, index): (readonly [E, E])[] => {
    const earlier = entries.slice(0, index).findLast((other) => same(other, later));
    const overtaken = entries.slice(index + 1).some((other) => same(other, later));
    return earlier === undefined || overtaken || earlier.present === later.present ? [] : [[earlier, later]];
  });
}

const word = (present: boolean, yes: string, no: string): string => (present ? yes : no);

const findingsAt = (chart: Chart, site: Site): readonly FindingEntry[] =>
  chart.at(site).filter((entry) => entry.kind === 'finding');

/** Findings at one site with opposite answers. */
export const oppositeFindings = (chart: Chart, site: Site): readonly Conflict[] =>
  turned(findingsAt(chart, site), (a, b) => findingName(a) === findingName(b) && meet(a, b)).map(
    ([earlier, later]) =>
      conflictOf(
        'opposite',
        `${placeText(later.site, later.side)}, ${findingName(later)}: ` +
          `${word(earlier.present, 'found', 'denied')} ${clockText(earlier)}, ` +
          `${word(later.present, 'found', 'denied')} ${clockText(later)}. Changed, or misheard?`,
        [earlier, later],
      ),
  );

/** Circulation, sensation or motion of one end with opposite answers. */
export const oppositeCsm = (chart: Chart, site: Site): readonly Conflict[] =>
  turned(
    chart.at(site).filter((entry) => entry.kind === 'csm'),
    (a, b) => a.aspect === b.aspect && a.digit === b.digit && measuresMeet(a, b) && sameSide(a, b),
  ).map(([earlier, later]) =>
    conflictOf(
      'opposite',
      `${placeText(later.site, later.side)}, ${later.aspect}: ` +
        `${limbWord(earlier)} ${clockText(earlier)}, ` +
        `${limbWord(later)} ${clockText(later)}. Changed, or misheard?`,
      [earlier, later],
    ),
  );

const SAME_SENSE: readonly (readonly [Aspect, readonly Finding[]])[] = [
  ['sensation', ['numbness', 'tingling']],
  ['motion', ['paralysis', 'weakness']],
];

/** Sensation called intact and the same hand or foot numb; motion intact and the same one weak. */
export const wholeAndNot = (chart: Chart, site: Site): readonly Conflict[] =>
  SAME_SENSE.flatMap(([aspect, findings]) =>
    chart
      .foundAt(site)
      .filter((entry) => findings.includes(entry.finding))
      .flatMap((bad): readonly Conflict[] => {
        const whole = chart
          .at(site)
          .filter((entry) => entry.kind === 'csm')
          .findLast(
            (entry) =>
              entry.aspect === aspect &&
              entry.digit === undefined &&
              !isImpaired(entry) &&
              sameSide(entry, bad),
          );
        if (whole === undefined) return [];
        const question =
          `${placeText(site, bad.side)}: ${aspect} intact ${clockText(whole)}, ` +
          `${findingName(bad)} ${clockText(bad)}. Changed, or misheard?`;
        return [conflictOf('opposite', question, [whole, bad])];
      }),
  );

/** A site declared free of anything, and a finding there. */
export const nothingAndSomething = (chart: Chart, site: Site): readonly Conflict[] =>
  findingsAt(chart, site)
    .filter((entry) => findingName(entry) === 'abnormality' && !entry.present)
    .flatMap((nothing) => {
      const something = chart
        .foundAt(site)
        .filter((entry) => findingName(entry) !== 'abnormality' && meet(entry, nothing));
      if (something.length === 0) return [];
      const names = something.map(findingName).join(', ');
      return [
        conflictOf(
          'nothing-and-something',
          `${placeText(nothing.site, nothing.side)}: said to have nothing, and ${names}. Which holds?`,
          [nothing, ...something],
        ),
      ];
    });
