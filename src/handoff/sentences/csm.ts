// Circulation, sensation and motion: limbs share a sentence only where the same was said of each in all its words.

import { isImpaired, limbWord } from '../../clinical/index.ts';
import type { Entry } from '../../record/entry.ts';
import { ASPECTS, type Side } from '../../terms/index.ts';
import { clock, type Day } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { type CsmFact, csmFacts } from './csm-fact.ts';
import { and, capital, once } from './list.ts';
import { thePlace } from './place.ts';
import { type Told, written } from './told.ts';
import { unspokenOfFact } from './trust.ts';

type Facts = readonly [CsmFact, ...CsmFact[]];

/** What is there and weak or decreased is neither intact nor gone. */
const stateOf = ({ latest }: CsmFact): 'intact' | 'present' | 'NOT intact' =>
  !latest.present ? 'NOT intact' : isImpaired(latest) ? 'present' : 'intact';

const WORST_FIRST = ['NOT intact', 'present', 'intact'] as const;

/** What a limb's facts must share to stand in one sentence: the digit, how it is, confirmation and time. */
function limbKey(fact: CsmFact, day: Day): string {
  const { site, side, digit, state, at } = fact.latest;
  return [site, side, digit ?? '', stateOf(fact), state, fact.timed ? clock(at, day) : ''].join('|');
}

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

const inAspectOrder = (facts: Facts): Facts => {
  const [first, ...others] = [...facts].sort(
    (one, other) => ASPECTS.indexOf(one.latest.aspect) - ASPECTS.indexOf(other.latest.aspect),
  );
  return [first ?? facts[0], ...others];
};

const slotsOf = ({ entries }: CsmFact): string => unspokenOfFact(entries).join('; ');

const isMixed = (facts: Facts): boolean => new Set(facts.map(slotsOf)).size > 1;

/** `circulation (radial pulse present)`; the details of a single aspect follow the sentence instead. */
function aspects(facts: Facts): string {
  const apart = isMixed(facts);
  return and(
    facts.map((fact) => {
      const details = facts.length === 1 ? [] : fact.details;
      const all = [...details, ...(apart && slotsOf(fact) !== '' ? [slotsOf(fact)] : [])];
      return `${fact.latest.aspect}${all.length === 0 ? '' : ` (${all.join(', ')})`}`;
    }),
  );
}

/** The limbs of a set in words; a left and a right hand that were said alike are both hands. */
function limbs(sets: readonly Facts[]): string {
  const firsts = sets.map(([{ latest }]) => latest);
  const names: string[] = [];
  for (const site of ['hand', 'foot'] as const) {
    const sides = new Set<Side | null>(firsts.filter((one) => one.site === site).map(({ side }) => side));
    const pair = sides.has('left') && sides.has('right');
    if (pair || sides.has('both')) names.push(thePlace({ site, side: 'both' }));
    for (const side of ['left', 'right', 'midline', null] as const)
      if (sides.has(side) && !(pair && (side === 'left' || side === 'right')))
        names.push(thePlace({ site, side }));
  }
  return and(names);
}

/** `Right hand: motion weak`, `Both feet: motion NOT intact` */
function shortWords(place: string, facts: Facts): string {
  const state = stateOf(facts[0]);
  const how = state === 'present' ? and(once(facts.map(({ latest }) => limbWord(latest)))) : state;
  return `${capital(place.replace(/^the /, ''))}: ${and(facts.map(({ latest }) => latest.aspect))} ${how}`;
}

function told(sets: readonly [Facts, ...Facts[]], day: Day): Told {
  const [facts] = sets;
  const [{ latest, timed, details }] = facts;
  const place =
    latest.digit === undefined ? limbs(sets) : thePlace({ site: latest.digit, side: latest.side });
  const after = facts.length === 1 && details.length > 0 ? `: ${details.join(', ')}` : '';
  const state = stateOf(facts[0]);
  const time = timed ? `, at ${clock(latest.at, day)}` : '';
  const words = `${capital(aspects(facts))} ${state} in ${place}${after}${time}`;
  const entries = sets.flatMap((set) => set.flatMap((fact) => fact.entries));
  const slots = isMixed(facts) ? ('inside' as const) : unspokenOfFact(facts[0].entries);
  const all = sets.flat();
  return {
    words,
    entries,
    slots,
    ...(slots === 'inside' ? {} : { short: shortWords(place, facts) }),
    ...(all.length < 2 ? {} : { clauses: all.map((fact) => told([[fact]], day)) }),
  };
}

/** One for each set of limbs alike; what is gone or weak comes first. `only` keeps those that are intact, or all others. */
export function csmTold(entries: readonly Entry[], day: Day, only?: boolean): readonly Told[] {
  const chosen = csmFacts(entries).filter(
    (fact) => only === undefined || (stateOf(fact) === 'intact') === only,
  );
  const byLimb = grouped(chosen, (fact) => limbKey(fact, day)).map(inAspectOrder);
  const sets = grouped(byLimb, (facts) => {
    const [first] = facts;
    const { digit, site, side, state, at } = first.latest;
    const own = digit === undefined ? '' : `${digit} ${site} ${side}`;
    const time = first.timed ? clock(at, day) : '';
    return [own, stateOf(first), state, time, slotsOf(first), aspects(facts), ...first.details].join('|');
  });
  return [...sets]
    .sort(([[one]], [[other]]) => WORST_FIRST.indexOf(stateOf(one)) - WORST_FIRST.indexOf(stateOf(other)))
    .map((set) => told(set, day));
}

/** One sentence for each set of limbs alike. */
export const csmSentences = (entries: readonly Entry[], day: Day, only?: boolean): readonly Sentence[] =>
  csmTold(entries, day, only).map(written);
