// The pupils: equal, round and reactive, where said, and their sizes in millimetres.

import { type Island, numberOf, tagOf, tagsOf } from '../../islands/island.ts';
import { BOUNDS, isWithin, type Read } from './vital-read.ts';

/** The pupils of an island; null where a size cannot be or nothing was said. */
export function pupilsOf(island: Island): Read {
  const both = numberOf(island, 'both');
  const leftMm = numberOf(island, 'left') ?? both;
  const rightMm = numberOf(island, 'right') ?? both;
  for (const size of [leftMm, rightMm]) if (size !== null && !isWithin(size, BOUNDS.millimetres)) return null;
  const quality = tagsOf(island, 'quality');
  const slots = {
    // One size said of both makes them equal.
    equal: saysYes(island, 'equal') ?? (both === null ? null : true),
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
    known: both !== null && tagOf(island, 'equal') === null ? { equal: 'inferred' } : {},
  };
}

function saysYes(island: Island, key: string): boolean | null {
  const value = tagOf(island, key);
  return value === null ? null : value === 'yes';
}
