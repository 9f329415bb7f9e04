// Circulation, sensation and motion: limbs share a sentence only where the same aspects were said alike in the same minute.

import { type Entry, standing } from '../../record/entry.ts';
import { ASPECTS, type Side } from '../../terms/index.ts';
import { clock, type Day, inOrder, minuteOf } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { and, capital } from './list.ts';
import { placeName, thePlace } from './place.ts';
import { idsOf, markOf, trustOf } from './trust.ts';

export type CsmEntry = Extract<Entry, { kind: 'csm' }>;

function details(entry: CsmEntry): string {
  const words = [
    entry.pulse === undefined ? undefined : `at the ${entry.pulse.replace('-', ' ')} pulse`,
    entry.capRefillSeconds === undefined ? undefined : `capillary refill ${entry.capRefillSeconds} seconds`,
    entry.warmth,
    typeof entry.strength === 'number' ? `strength ${entry.strength} of 5` : strengthWord(entry.strength),
    ...(entry.quality ?? []),
  ].filter((word) => word !== undefined);
  return words.length === 0 ? '' : `: ${words.join(', ')}`;
}

const strengthWord = (strength: string | undefined): string | undefined =>
  strength === undefined ? undefined : `strength ${strength}`;

const limb = (site: 'hand' | 'foot', side: Side | null): string => thePlace({ site, side });

const where = (entry: CsmEntry): string =>
  entry.digit === undefined
    ? limb(entry.site, entry.side)
    : thePlace({ site: entry.digit, side: entry.side });

/** The limbs of a set in words; a left and a right hand that were said alike are both hands. */
function limbs(entries: readonly CsmEntry[]): string {
  const names: string[] = [];
  for (const site of ['hand', 'foot'] as const) {
    const sides = new Set(entries.filter((entry) => entry.site === site).map(({ side }) => side));
    const pair = sides.has('left') && sides.has('right');
    if (pair || sides.has('both')) names.push(placeName({ site, side: 'both' }));
    for (const side of ['left', 'right', 'midline', null] as const)
      if (sides.has(side) && !(pair && (side === 'left' || side === 'right'))) names.push(limb(site, side));
  }
  return and(names);
}

/** Alike in all but the limb: may share a sentence once each limb's aspects are known to be the same. */
const setKey = (entry: CsmEntry, timed: boolean): string =>
  [entry.present, minuteOf(entry.at), trustOf(entry), entry.digit ?? '', details(entry), timed].join('|');

const limbKey = (entry: CsmEntry): string => `${entry.site}|${entry.side}`;

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return [...groups.values()];
}

const aspectsOf = (entries: readonly CsmEntry[]): readonly string[] =>
  ASPECTS.filter((aspect) => entries.some((entry) => entry.aspect === aspect));

function sentence(entries: readonly CsmEntry[], first: CsmEntry, timed: boolean, day: Day): Sentence {
  const aspects = and(aspectsOf(entries));
  const place = first.digit === undefined ? limbs(entries) : where(first);
  const state = first.present ? 'intact' : 'NOT intact';
  const time = timed ? `, at ${clock(first.at, day)}` : '';
  return {
    text: `${capital(aspects)} ${state} in ${place}${details(first)}${time}${markOf(entries)}.`,
    entries: idsOf(entries),
  };
}

/** One sentence for each set of limbs alike; what is not intact comes first. `only` keeps intact or not-intact ones. */
export function csmSentences(entries: readonly Entry[], day: Day, only?: boolean): readonly Sentence[] {
  const all = standing(inOrder(entries), 'csm');
  const times = new Map<string, Set<number>>();
  for (const entry of all) {
    const key = `${limbKey(entry)}|${entry.aspect}`;
    times.set(key, (times.get(key) ?? new Set()).add(minuteOf(entry.at)));
  }
  const timed = (entry: CsmEntry): boolean =>
    minuteOf(entry.at) !== minuteOf(entry.heardAt) ||
    (times.get(`${limbKey(entry)}|${entry.aspect}`)?.size ?? 0) > 1;
  const chosen = all.filter(({ present }) => only === undefined || present === only);
  const alike = grouped(chosen, (entry) => setKey(entry, timed(entry))).flatMap((set) => {
    const byLimb = grouped(set, (entry) => `${limbKey(entry)}|${entry.digit ?? ''}`);
    return grouped(byLimb, (one) => {
      const [first] = one;
      return first?.digit === undefined ? aspectsOf(one).join() : `${limbKey(first)}|${first.digit}`;
    }).map((sets) => sets.flat());
  });
  return alike
    .flatMap((set) => {
      const [first] = set;
      return first === undefined
        ? []
        : [{ present: first.present, said: sentence(set, first, timed(first), day) }];
    })
    .sort((one, other) => Number(one.present) - Number(other.present))
    .map(({ said }) => said);
}
