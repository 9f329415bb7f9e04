// The vertebra or the rib that a site names, one for each, and none that a body does not have.

import { hasTag, type Island, tagOf, tagsOf } from './island.ts';

// How many a body has; C8 and S5 are segments that a level may be named by (common practice, no source).
const MOST_LEVELS: Readonly<Record<string, number>> = { C: 8, T: 12, L: 5, S: 5, rib: 12 };

/** `C5`, `T4`, `rib-7`, one for each that was named ("C5 to C7" names three); none where one cannot be. */
export function levelsOf(island: Pick<Island, 'tags' | 'slots'>): readonly string[] {
  const letter = tagOf(island, 'level');
  if (letter === null) return [];
  const said = [...island.slots.map((slot) => slot.value), ...tagsOf(island, 'ordinal').map(Number)];
  const most = MOST_LEVELS[letter] ?? 0;
  if (said.some((figure) => !Number.isInteger(figure) || figure < 1 || figure > most)) return [];
  const [first, last] = [said[0] ?? 0, said.at(-1) ?? 0];
  const figures =
    hasTag(island, 'range') && last > first
      ? Array.from({ length: last - first + 1 }, (_, i) => first + i)
      : [...new Set(said)];
  return figures.map((figure) => (letter === 'rib' ? `rib-${figure}` : `${letter}${figure}`));
}
