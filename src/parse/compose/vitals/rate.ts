// A pulse or breathing rate per minute, as said or as counted over some seconds, and what it is like.

import { type Island, numberOf, tagsOf } from '../../islands/island.ts';
import { type Bounds, isWholeWithin, type Read } from './vital-read.ts';

// "I have got one": no heart beats so seldom, and the one is the pulse (common practice, no source).
const LEAST_PULSE = 10;

/** The rate of an island; "strong and regular" alone is one without a number. */
export function rateOf(island: Island, vital: 'pulse' | 'respirations', bounds: Bounds): Read {
  const quality = [...new Set(tagsOf(island, 'quality'))];
  const words = quality.length > 0 ? { quality } : {};
  const said = numberOf(island, 'rate');
  const count = numberOf(island, 'count');
  const seconds = numberOf(island, 'window');
  // "Fifteen in fifteen seconds so sixty": what was counted must give what was said, within a beat of rounding.
  const counted = count !== null && seconds !== null && seconds > 0 ? (count * 60) / seconds : null;
  if (said !== null && counted !== null && Math.abs(said - counted) > 60 / (seconds ?? 60)) return null;
  const rate = said ?? counted;
  if (rate === null) return quality.length > 0 ? { reading: { vital, value: words } } : null;
  if (!isWholeWithin(rate, bounds) || (vital === 'pulse' && rate > 0 && rate < LEAST_PULSE)) return null;
  return { reading: { vital, value: { rate, ...words } }, known: said === null ? { value: 'inferred' } : {} };
}
