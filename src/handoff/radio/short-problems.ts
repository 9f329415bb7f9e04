// Problems in the few words of a short report: each place with its worst findings, worst place first.

import { standing } from '../../record/entry.ts';
import type { Finding } from '../../terms/index.ts';
import { clock, type Day, inOrder } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { findingRank, rankOf } from '../problem-order.ts';
import { csmTold } from '../sentences/csm.ts';
import { type Fact, type FindingEntry, factsOf, isContrary } from '../sentences/fact.ts';
import { and, capital, once } from '../sentences/list.ts';
import { findingPhrase } from '../sentences/phrase.ts';
import { type Place, placeName } from '../sentences/place.ts';
import type { Told } from '../sentences/told.ts';
import { unspokenIn } from '../sentences/trust.ts';

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

const isBare = (entry: FindingEntry): boolean =>
  findingPhrase(entry) === findingPhrase({ finding: entry.finding });

const partOf = ({ part }: FindingEntry): string => (part ?? []).map((word) => `${word} `).join('');

/** True where another fact of the place says the same in more words, or says how it was later. */
function isOutdone({ latest }: Fact, others: readonly Fact[]): boolean {
  return others.some(({ latest: other }) => {
    if (other === latest || other.finding !== latest.finding) return false;
    if (isBare(latest) && latest.part === undefined && (!isBare(other) || other.part !== undefined))
      return true;
    return (
      STATES.includes(latest.finding) &&
      `${other.part}` === `${latest.part}` &&
      Date.parse(other.at) > Date.parse(latest.at)
    );
  });
}

/** The fact, with when it was denied where it was. */
function phrase({ latest }: Fact, denied: readonly FindingEntry[], day: Day): string {
  const words = `${partOf(latest)}${findingPhrase(latest)}`;
  const against = denied.findLast((entry) => isContrary(latest, entry));
  return against === undefined
    ? words
    : `${words} at ${clock(latest.at, day)} but denied at ${clock(against.at, day)}`;
}

interface Problem {
  readonly place: Place;
  readonly what: string;
  readonly facts: readonly Fact[];
  readonly slots: 'inside' | undefined;
}

function problemOf(facts: readonly [Fact, ...Fact[]], denied: readonly FindingEntry[], day: Day): Problem {
  const [{ latest }] = facts;
  const worst = facts
    .filter((fact) => !isOutdone(fact, facts))
    .sort((one, other) => findingRank(one.latest) - findingRank(other.latest))
    .slice(0, FACTS);
  const slots = new Set(worst.map(({ entries }) => unspokenIn(entries).join('; ')));
  const said = worst.map((fact) => {
    const own = unspokenIn(fact.entries);
    const mark = slots.size > 1 && own.length > 0 ? ` (${own.join('; ')})` : '';
    return `${phrase(fact, denied, day)}${mark}`;
  });
  const { site, side, level } = latest;
  return {
    place: { site, side, ...(level === undefined ? {} : { level }) },
    what: once(said).join(', '),
    facts: worst,
    slots: slots.size > 1 ? 'inside' : undefined,
  };
}

const short = (place: Place): string => placeName(place).replace(' of the abdomen', '');

/** Ribs of one side of which the same was found stand in one. */
function named(
  problem: Problem,
  all: readonly Problem[],
): { readonly name: string; readonly of: readonly Problem[] } {
  const { place, what } = problem;
  const alike = all.filter(
    (one) => one.place.site === 'ribs' && one.place.side === place.side && one.what === what,
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
    const { site, side, level, state } = fact.latest;
    const key = [site, side, level ?? '', state].join('|');
    const place = places.get(key);
    if (place === undefined) places.set(key, [fact]);
    else place.push(fact);
  }
  return [...places.values()];
}

/** `Right thigh: lateral 10 cm laceration, controlled bleeding`, worst place first. */
export function shortProblems(input: HandoffInput, day: Day): readonly Told[] {
  const rank = rankOf(input);
  const findings = standing(inOrder(input.entries), 'finding');
  const facts = factsOf(findings).filter(({ latest }) => latest.present);
  const denied = findings.filter(({ present }) => !present);
  const problems = grouped(facts).map((place) => problemOf(place, denied, day));
  const told = problems.flatMap((problem): readonly Told[] => {
    const { name, of } = named(problem, problems);
    if (of[0] !== problem) return [];
    return [
      {
        words: `${capital(name)}: ${problem.what}`,
        entries: of.flatMap((one) => one.facts.flatMap(({ entries }) => entries)),
        ...(problem.slots === undefined ? {} : { slots: problem.slots }),
      },
    ];
  });
  const own = (input.problems ?? [])
    .filter(({ by, struck }) => by === 'responder' && !struck)
    .map(({ text }): Told => ({ words: capital(text), entries: [] }));
  const ranked = [...told, ...csmTold(input.entries, day, false)].map((one) => ({
    one,
    place: rank(one.entries),
  }));
  return [...own, ...[...ranked].sort((a, b) => a.place - b.place).map(({ one }) => one)];
}
