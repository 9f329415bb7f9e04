// Circulation, sensation and motion: limbs share a sentence only where the same was said of each in all its words.

import type { Entry } from '../../record/entry.ts';
import { ASPECTS, type Side } from '../../terms/index.ts';
import { clock, type Day } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { type CsmFact, csmFacts } from './csm-fact.ts';
import { and, capital } from './list.ts';
import { thePlace } from './place.ts';
import { type Told, written } from './told.ts';
import { unspokenOfFact } from './trust.ts';

type Facts = readonly [CsmFact, ...CsmFact[]];

/** What a limb's facts must share to stand in one sentence: the digit, yes or no, confirmation and time. */
function limbKey({ latest, timed }: CsmFact, day: Day): string {
  const { site, side, digit, present, state, at } = latest;
  return [site, side, digit ?? '', present, state, timed ? clock(at, day) : ''].join('|');
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

function told(sets: readonly [Facts, ...Facts[]], day: Day): Told {
  const [facts] = sets;
  const [{ latest, timed, details }] = facts;
  const place =
    latest.digit === undefined ? limbs(sets) : thePlace({ site: latest.digit, side: latest.side });
  const after = facts.length === 1 && details.length > 0 ? `: ${details.join(', ')}` : '';
  const state = latest.present ? 'intact' : 'NOT intact';
  const time = timed ? `, at ${clock(latest.at, day)}` : '';
  const words = `${capital(aspects(facts))} ${state} in ${place}${after}${time}`;
  const entries = sets.flatMap((set) => set.flatMap((fact) => fact.entries));
  const slots = isMixed(facts) ? ('inside' as const) : unspokenOfFact(facts[0].entries);
  const all = sets.flat();
  return {
    words,
    entries,
    slots,
    ...(all.length < 2 ? {} : { clauses: all.map((fact) => told([[fact]], day)) }),
  };
}

/** One for each set of limbs alike; what is not intact comes first. `only` keeps intact or not-intact ones. */
export function csmTold(entries: readonly Entry[], day: Day, only?: boolean): readonly Told[] {
  const chosen = csmFacts(entries).filter(({ latest }) => only === undefined || latest.present === only);
  const byLimb = grouped(chosen, (fact) => limbKey(fact, day)).map(inAspectOrder);
  const sets = grouped(byLimb, (facts) => {
    const [first] = facts;
    const { digit, site, side, present, state, at } = first.latest;
    const own = digit === undefined ? '' : `${digit} ${site} ${side}`;
    const time = first.timed ? clock(at, day) : '';
    return [own, present, state, time, slotsOf(first), aspects(facts), ...first.details].join('|');
  });
  return [...sets]
    .sort(([[one]], [[other]]) => Number(one.latest.present) - Number(other.latest.present))
    .map((set) => told(set, day));
}

/** One sentence for each set of limbs alike. */
export const csmSentences = (entries: readonly Entry[], day: Day, only?: boolean): readonly Sentence[] =>
  csmTold(entries, day, only).map(written);
