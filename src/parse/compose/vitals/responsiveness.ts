// How responsive the patient is on the AVPU scale, and in how many of four ways oriented.

import { type Island, numberOf, tagOf } from '../../islands/island.ts';
import { BOUNDS, isWholeWithin, type Read } from './vital-read.ts';

/** The responsiveness of an island; null where an orientation cannot be or nothing was said. */
export function responsivenessOf(island: Island): Read {
  const avpu = tagOf(island, 'avpu') as 'A' | 'V' | 'P' | 'U' | null;
  const word = tagOf(island, 'orientation');
  const orientation = numberOf(island, 'orientation') ?? (word === null || word === '' ? null : Number(word));
  if (orientation !== null && !isWholeWithin(orientation, BOUNDS.orientation)) return null;
  if (avpu === null && orientation === null) return null;
  return {
    reading: {
      vital: 'responsiveness',
      value: { ...(avpu === null ? {} : { avpu }), ...(orientation === null ? {} : { orientation }) },
    },
  };
}
