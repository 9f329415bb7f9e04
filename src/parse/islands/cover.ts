// The best cover of an utterance by islands: long phrases before short ones, likely before unlikely, none overlapping.

import type { Token } from '../token.ts';
import type { Island } from './island.ts';
import { type Fills, islandsAt } from './match.ts';
import type { Branch } from './tree.ts';

/** Islands over exactly the same words, most likely first: the composer takes the one that makes sense there. */
export interface Element {
  readonly from: number;
  readonly to: number;
  readonly islands: readonly Island[];
}

const WORD = 10;
// One long island beats several short ones over the same words.
const EACH = 3;
const COST = 4;

// "Strong radial, good sensation": of equal covers the one whose phrases end where the speaker paused.
const ACROSS = 1;

const worth = (island: Island): number => WORD * (island.to - island.from) - EACH - COST * island.cost;

/** The elements in the order spoken; words between them are known to no phrase. Linear in the number of words. */
export function cover(root: Branch, tokens: readonly Token[], words: readonly string[]): readonly Element[] {
  const size = tokens.length;
  const best: { score: number; by: readonly Island[] | null }[] = Array.from({ length: size + 1 }, () => ({
    score: -1,
    by: null,
  }));
  best[0] = { score: 0, by: null };
  const fills: Fills = new Map();
  const reach = (to: number, score: number, by: readonly Island[] | null): void => {
    const there = best[to];
    // Of equal covers the one whose longer phrase comes first is kept: "does your | left knee".
    if (there !== undefined && score >= there.score) best[to] = { score, by };
  };
  for (let at = 0; at < size; at++) {
    const score = best[at]?.score ?? 0;
    reach(at + 1, score, null);
    for (const [to, group] of byEnd(islandsAt(root, tokens, words, at, fills)))
      reach(to, score + Math.max(...group.map(worth)) - (isAcross(tokens, at, to) ? ACROSS : 0), group);
  }
  return trace(best);
}

function isAcross(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to - 1; k++) if (tokens[k]?.pause === 'pause') return true;
  return false;
}

function byEnd(islands: readonly Island[]): ReadonlyMap<number, readonly Island[]> {
  const groups = new Map<number, Island[]>();
  for (const island of islands) {
    if (island.to <= island.from) continue;
    const group = groups.get(island.to);
    if (group === undefined) groups.set(island.to, [island]);
    else group.push(island);
  }
  for (const group of groups.values()) group.sort((a, b) => worth(b) - worth(a));
  return groups;
}

function trace(best: readonly { by: readonly Island[] | null }[]): readonly Element[] {
  const elements: Element[] = [];
  for (let at = best.length - 1; at > 0; ) {
    const islands = best[at]?.by ?? null;
    const from = islands?.[0]?.from ?? at - 1;
    if (islands !== null) elements.push({ from, to: at, islands });
    at = from;
  }
  return elements.reverse();
}
