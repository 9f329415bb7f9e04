// An oxygen saturation in percent, and whether it was taken on oxygen, where that was said.

import { hasTag, type Island, numberOf } from '../../islands/island.ts';
import { BOUNDS, isWithin, type Read } from './vital-read.ts';

/** The saturation of an island. */
export function saturationOf(island: Island): Read {
  const percent = numberOf(island, 'percent');
  if (!isWithin(percent, BOUNDS.percent)) return null;
  const onOxygen = hasTag(island, 'oxygen') ? true : hasTag(island, 'air') ? false : null;
  return {
    reading: { vital: 'oxygen-saturation', value: { percent, ...(onOxygen === null ? {} : { onOxygen }) } },
  };
}
