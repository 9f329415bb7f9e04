// The pupils: equal, round and reactive, where said, and their sizes in millimetres.

import { type FilledSlot, type Island, numberOf, tagOf, tagsOf } from '../../islands/island.ts';
import type { Token } from '../../token.ts';
import { BOUNDS, isWithin, type Read } from './vital-read.ts';

/** The pupils of an island; null where a size cannot be or nothing was said. */
export function pupilsOf(island: Island): Read {
  const [one, other] = [numberOf(island, 'one'), numberOf(island, 'other')];
  const unlike = one !== null && other !== null && one !== other;
  if (unlike && !(isWithin(one, BOUNDS.millimetres) && isWithin(other, BOUNDS.millimetres))) return null;
  // "Three and five, equal" says two things, of which nobody knows which holds.
  if (unlike && saysYes(island, 'equal') === true) return null;
  const both = numberOf(island, 'both') ?? (unlike ? null : one);
  const leftMm = numberOf(island, 'left') ?? both;
  const rightMm = numberOf(island, 'right') ?? both;
  for (const size of [leftMm, rightMm]) if (size !== null && !isWithin(size, BOUNDS.millimetres)) return null;
  const quality = tagsOf(island, 'quality');
  const slots = {
    // One size said of both makes them equal.
    equal: unlike ? false : (saysYes(island, 'equal') ?? (both === null ? null : true)),
    round: saysYes(island, 'round'),
    reactive: saysYes(island, 'reactive'),
    leftReactive: saysYes(island, 'left-reactive'),
    rightReactive: saysYes(island, 'right-reactive'),
    leftMm,
    rightMm,
  };
  const value = Object.fromEntries(Object.entries(slots).filter(([, slot]) => slot !== null));
  if (Object.keys(value).length === 0 && quality.length === 0) return null;
  return {
    reading: { vital: 'pupils', value: { ...value, ...(quality.length > 0 ? { quality } : {}) } },
    known: (unlike || both !== null) && tagOf(island, 'equal') === null ? { equal: 'inferred' } : {},
  };
}

const HOW =
  /^(is|looks|still|slow|sluggish|fixed|blown|dilated|brisk|reacts|reacting|reactive|responds|bigger|smaller|larger|wider|not|non|a|bit|very)$/;

/** "The left one slow": "one" is the pupil, and no size. */
export function withoutPronouns(island: Island, tokens: readonly Token[]): Island {
  if (tagOf(island, 'vital') !== 'pupils') return island;
  const isPronoun = ({ from, to }: FilledSlot): boolean =>
    to - from === 1 &&
    tokens[from]?.word === 'one' &&
    /^(left|right|other)$/.test(tokens[from - 1]?.word ?? '') &&
    tokens[from]?.pause === '' &&
    HOW.test(tokens[to]?.word ?? '');
  const gone = island.slots.flatMap((slot, k) => (isPronoun(slot) ? [k] : []));
  if (gone.length === 0) return island;
  let number = -1;
  const tags = island.tags.filter(({ key }) => key !== 'num' || !gone.includes(++number));
  return { ...island, tags, slots: island.slots.filter((_, k) => !gone.includes(k)) };
}

/** What must be asked of two sizes that were said without their sides, or null. */
export function pupilDoubt(island: Island): string | null {
  const [one, other] = [numberOf(island, 'one'), numberOf(island, 'other')];
  return one === null || other === null || one === other
    ? null
    : `Which pupil is ${String(one)} mm, and which ${String(other)}?`;
}

function saysYes(island: Island, key: string): boolean | null {
  const value = tagOf(island, key);
  return value === null ? null : value === 'yes';
}
