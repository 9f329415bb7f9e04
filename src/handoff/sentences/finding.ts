// A group of findings as one sentence: present ones after their place, absent ones under one "no" that names the place.

import { clock, type Day } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { type Fact, type FindingEntry, factsOf } from './fact.ts';
import type { FindingGroup } from './groups.ts';
import { homeTail, isAtHome } from './home.ts';
import { and, capital, once, or } from './list.ts';
import { findingPhrase } from './phrase.ts';
import { noPlace, placeName } from './place.ts';
import { type Told, written } from './told.ts';
import { unspokenOfFact } from './trust.ts';

/** The facts of a group; where they are not worked out yet, each carries its time if the group asks for it. */
function factsIn({ entries, timed, facts }: FindingGroup): readonly Fact[] {
  return facts ?? factsOf(entries).map((fact) => (timed ? { ...fact, when: 'at' as const } : fact));
}

const timeOf = ({ latest, when }: Fact, day: Day): string =>
  when === 'never' ? '' : ` ${when} ${clock(latest.at, day)}`;

const partOf = ({ part }: FindingEntry): string => (part ?? []).map((word) => `${word} `).join('');

/** Slots not spoken, where they differ from fact to fact, stand with the fact they are of. */
const slotsOf = ({ entries }: Fact, apart: boolean): string => {
  const slots = unspokenOfFact(entries);
  return apart && slots.length > 0 ? ` (${slots.join('; ')})` : '';
};

/** The part that all facts of a place have in common, which then belongs to the place; else undefined. */
export function sharedPart(facts: readonly Fact[]): FindingEntry['part'] {
  const [first] = facts;
  const part = first?.latest.part;
  return facts.every(({ latest }) => `${latest.part}` === `${part}`) ? part : undefined;
}

/** `deformity and tenderness; distal swelling`: what has a part of its own stands apart, so that it lends it to none. */
function presentWords(facts: readonly Fact[], apart: boolean, day: Day): string {
  const shared = sharedPart(facts) !== undefined;
  const said = (fact: Fact): string =>
    `${shared ? '' : partOf(fact.latest)}${findingPhrase(fact.latest)}${timeOf(fact, day)}${slotsOf(fact, apart)}`;
  const isWhole = ({ latest }: Fact): boolean => shared || latest.part === undefined;
  const whole = facts.filter(isWhole).map(said);
  const parts = facts.filter((fact) => !isWhole(fact)).map(said);
  return [...(whole.length === 0 ? [] : [and(once(whole))]), ...once(parts)].join('; ');
}

/** True where some facts of the group have a slot that was not spoken, and others have not. */
const isMixed = (facts: readonly Fact[]): boolean =>
  new Set(facts.map(({ entries }) => unspokenOfFact(entries).join())).size > 1;

/** `deformity, swelling or tenderness`, as it stands under the "no" of a group of absent findings. */
export const deniedWords = (group: FindingGroup): string =>
  or(once(factsIn(group).map(({ latest }) => findingPhrase(latest))));

/** ` at 14:20`: the time that all absent findings of the group share; empty where it need not be told. */
export function deniedTime(group: FindingGroup, day: Day): string {
  const [first] = factsIn(group);
  return first === undefined ? '' : timeOf(first, day);
}

function wordsOf(first: FindingEntry, facts: readonly Fact[], apart: boolean, day: Day): string {
  const { site, side, level, present } = first;
  if (isAtHome(first) && facts.every(({ latest }) => isAtHome(latest) && latest.finding === first.finding)) {
    const tail = homeTail(first, present);
    const said = facts.map(
      (fact) =>
        `${partOf(fact.latest)}${findingPhrase(fact.latest)}${tail}${timeOf(fact, day)}${slotsOf(fact, apart)}`,
    );
    return present ? capital(and(said)) : `No ${or(said)}`;
  }
  if (present) {
    const part = sharedPart(facts);
    const place = placeName({
      site,
      side,
      ...(level === undefined ? {} : { level }),
      ...(part === undefined ? {} : { part }),
    });
    return `${capital(place)}: ${presentWords(facts, apart, day)}`;
  }
  const [fact] = facts;
  const denied = or(once(facts.map(({ latest }) => findingPhrase(latest))));
  const time = fact === undefined ? '' : timeOf(fact, day);
  // "Of the back" is also a part of some other place; in front it is not.
  return site === 'back'
    ? `${capital(placeName(first))}: no ${denied}${time}`
    : `No ${denied} of ${noPlace(first)}${time}`;
}

/** The group in words, with the mark of what was not spoken wherever it is not of the whole sentence. */
export function findingTold(group: FindingGroup, day: Day): Told {
  const facts = factsIn(group);
  const [first] = group.entries;
  const apart = isMixed(facts);
  const single = (fact: Fact): Told => ({
    words: wordsOf(fact.latest, [fact], false, day),
    entries: fact.entries,
    slots: unspokenOfFact(fact.entries),
  });
  return {
    words: wordsOf(first, facts, apart, day),
    entries: group.entries,
    slots: apart ? 'inside' : unspokenOfFact(facts[0]?.entries ?? []),
    ...(facts.length < 2 ? {} : { clauses: facts.map(single) }),
  };
}

/** `No deformity, swelling or tenderness of the right wrist (unconfirmed).` */
export const findingSentence = (group: FindingGroup, day: Day): Sentence => written(findingTold(group, day));
