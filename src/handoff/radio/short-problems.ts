// Problems in the few words of a short report: each place with its worst findings, worst place first.

import { graveness } from '../../clinical/index.ts';
import { type Entry, standing } from '../../record/entry.ts';
import { type Finding, holdersOf, isPaired } from '../../terms/index.ts';
import { type Day, inOrder, perMembers } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { rankOf } from '../problem-order.ts';
import { limbProblems } from '../sentences/csm-return.ts';
import { type Fact, type FindingEntry, factsOf } from '../sentences/fact.ts';
import { sharedPart } from '../sentences/finding.ts';
import { homeTail, isAtHome } from '../sentences/home.ts';
import { and, capital, once } from '../sentences/list.ts';
import { isBare } from '../sentences/phrase.ts';
import { type Place, placeName } from '../sentences/place.ts';
import type { Told } from '../sentences/told.ts';
import { unspokenOfFact } from '../sentences/trust.ts';
import { shortFact } from './short-fact.ts';

/** Facts of one place that a short report tells; the others are further details. */
const FACTS = 3;

/** Findings that are there once or not: said again, the latest words are how it is. Of wounds there may be several. */
const STATES: readonly Finding[] = [
  'bleeding',
  'pain',
  'tenderness',
  'swelling',
  'numbness',
  'tingling',
  'weakness',
  'paralysis',
  'instability',
  'rigidity',
  'guarding',
  'distension',
];

/** True where the second says what the first does, and more. */
const isWithin = ({ latest }: Fact, { latest: other }: Fact): boolean =>
  other !== latest &&
  other.finding === latest.finding &&
  isBare(latest) &&
  latest.part === undefined &&
  (!isBare(other) || other.part !== undefined);

/** What is told once of a place, by the words that make two facts the same. */
const stateKey = ({ finding, part }: FindingEntry): string => `${finding} ${part}`;

/** Of one place, the facts that no other is told instead of: none says how it was later, and of what is left none says more. */
function notOutdone(facts: readonly Fact[]): Fact[] {
  const last = new Map<string, number>();
  for (const { latest } of facts)
    last.set(
      stateKey(latest),
      Math.max(last.get(stateKey(latest)) ?? Number.NEGATIVE_INFINITY, Date.parse(latest.at)),
    );
  const left = facts.filter(
    ({ latest }) =>
      !STATES.includes(latest.finding) || (last.get(stateKey(latest)) ?? 0) <= Date.parse(latest.at),
  );
  // One that is told no more tells nothing of another: "bleeding again" is not in the "bleeding heavily" before it.
  const detailed = new Set(
    left
      .map(({ latest }) => latest)
      .filter((one) => one.part !== undefined || !isBare(one))
      .map(({ finding }) => finding),
  );
  return left.filter(
    ({ latest }) => latest.part !== undefined || !detailed.has(latest.finding) || !isBare(latest),
  );
}

interface Problem {
  readonly place: Place;
  readonly what: string;
  /** what follows a finding that needs no place before it: ` to the left`; null for any other */
  readonly home: string | null;
  /** what it tells: its facts, what lies within them, and what was said against them */
  readonly entries: readonly FindingEntry[];
  readonly state: FindingEntry['state'];
  readonly slots: 'inside' | readonly string[];
}

function problemOf(facts: readonly [Fact, ...Fact[]], most: number, day: Day): Problem {
  const [{ latest }] = facts;
  const worst = notOutdone(facts)
    .sort((one, other) => graveness(one.latest) - graveness(other.latest))
    .slice(0, most);
  const slots = new Set(worst.map(({ entries }) => unspokenOfFact(entries).join('; ')));
  const part = sharedPart(worst);
  const within = facts.filter((fact) => worst.some((other) => isWithin(fact, other)));
  const said = worst.map((fact) => {
    const own = unspokenOfFact(fact.entries);
    const mark = slots.size > 1 && own.length > 0 ? ` (${own.join('; ')})` : '';
    return `${shortFact(fact, part !== undefined && !isAtHome(latest), day)}${mark}`;
  });
  const { site, side, level } = latest;
  return {
    place: {
      site,
      side,
      ...(level === undefined ? {} : { level }),
      ...(part === undefined ? {} : { part }),
    },
    what: once(said).join(', '),
    home: isAtHome(latest) ? homeTail(latest, true) : null,
    entries: [
      ...worst.flatMap(({ entries }) => entries),
      ...within.flatMap(({ entries }) => entries),
      ...worst.flatMap(({ against, gone }) => [...against, ...(gone === undefined ? [] : [gone])]),
    ],
    state: latest.state,
    slots: slots.size > 1 ? 'inside' : unspokenOfFact(worst[0]?.entries ?? []),
  };
}

/** What is told of a place, by how many findings and on which day; as long as its facts are the same it is not told anew. */
const tellings = perMembers<Fact, Map<string, Problem>>(() => new Map());

function toldOnce(facts: readonly [Fact, ...Fact[]], most: number, day: Day): Problem {
  const known = tellings(facts);
  const key = `${most} ${day}`;
  const problem = known.get(key) ?? problemOf(facts, most, day);
  known.set(key, problem);
  return problem;
}

const short = (place: Place): string => placeName(place).replace(' of the abdomen', '');

/** Ribs of one side of which the same was found stand in one. */
function named(
  problem: Problem,
  all: readonly Problem[],
): { readonly name: string; readonly of: readonly Problem[] } {
  const { place, what, state } = problem;
  const alike = all.filter(
    (one) =>
      one.place.site === 'ribs' && one.place.side === place.side && one.state === state && one.what === what,
  );
  const levels = alike.flatMap(({ place: { level } }) => level?.replace('rib-', '') ?? []);
  if (place.site !== 'ribs' || levels.length < 2 || levels.length < alike.length || place.side === null)
    return { name: short(place), of: [problem] };
  const { site, side } = place;
  return { name: `${placeName({ site, side })} ${and(levels)}`, of: alike };
}

function grouped(facts: readonly Fact[]): readonly (readonly [Fact, ...Fact[]])[] {
  const places = new Map<string, [Fact, ...Fact[]]>();
  for (const fact of facts) {
    const { site, side, level, state, finding } = fact.latest;
    const home = isAtHome(fact.latest) ? finding : '';
    const key = [site, side, level ?? '', state, home].join('|');
    const place = places.get(key);
    if (place === undefined) places.set(key, [fact]);
    else place.push(fact);
  }
  return [...places.values()];
}

/**
 * True where the side was not said and each of the findings was also said, with its side, of the same place or one within
 * it: "his leg is bleeding" and then "the right thigh is bleeding". It is told after all others, and not in place of one.
 */
function isSaidWithSide(entries: readonly Entry[], all: readonly FindingEntry[]): boolean {
  return entries.every(
    (entry) =>
      entry.kind === 'finding' &&
      entry.side === null &&
      isPaired(entry.site) &&
      all.some(
        (other) =>
          other.present === entry.present &&
          other.finding === entry.finding &&
          (other.side === 'left' || other.side === 'right') &&
          (other.site === entry.site || holdersOf(other.site).includes(entry.site)),
      ),
  );
}

export interface ShortProblem {
  /** `Right thigh: controlled bleeding, lateral 10 cm laceration` */
  readonly full: Told;
  /** its worst finding alone */
  readonly brief: Told;
}

/** The problems, worst place first. */
export function shortProblems(input: HandoffInput, day: Day): readonly ShortProblem[] {
  const tell = placesTold(input, day);
  const brief = tell(1);
  return tell(FACTS).map((full) => {
    const within = new Set(full.entries);
    const least = brief.find(({ entries }) => entries.some((entry) => within.has(entry))) ?? full;
    return { full, brief: least.short === undefined ? least : { ...least, words: least.short } };
  });
}

/** Gives the places, each with so many of its worst findings. */
function placesTold(input: HandoffInput, day: Day): (most: number) => readonly Told[] {
  const rank = rankOf(input);
  const findings = standing(inOrder(input.entries), 'finding');
  const facts = factsOf(findings).filter(({ latest }) => latest.present);
  const places = grouped(facts);
  const limbs = limbProblems(input.entries, day, 'later');
  const own = (input.problems ?? [])
    .filter(({ by, struck }) => by === 'responder' && !struck)
    .map(({ text }): Told => ({ words: capital(text), entries: [] }));
  return (most) => {
    const told = toldOf(places.map((place) => toldOnce(place, most, day)));
    const ranked = [...told, ...limbs].map((one) => ({
      one,
      place: isSaidWithSide(one.entries, findings) ? Number.POSITIVE_INFINITY : rank(one.entries),
    }));
    return [...own, ...[...ranked].sort((a, b) => a.place - b.place).map(({ one }) => one)];
  };
}

/** The problems in words, alike ribs as one. */
const toldOf = (problems: readonly Problem[]): readonly Told[] =>
  problems.flatMap((problem): readonly Told[] => {
    const { name, of } = named(problem, problems);
    if (of[0] !== problem) return [];
    return [
      {
        words:
          problem.home === null
            ? `${capital(name)}: ${problem.what}`
            : capital(`${problem.what}${problem.home}`),
        entries: of.flatMap((one) => one.entries),
        slots: problem.slots,
      },
    ];
  });
