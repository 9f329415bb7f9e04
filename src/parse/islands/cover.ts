// The best cover of an utterance by islands: long phrases before short ones, likely before unlikely, none overlapping.

import type { Token } from '../token.ts';
import { fillsOf } from './fill.ts';
import { hasTag, type Island } from './island.ts';
import { islandsAt } from './match.ts';
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

const likelyFirst = (a: Island, b: Island): number => worth(b) - worth(a);

/** The elements in the order spoken; words between them are known to no phrase. Linear in the number of words. */
export function cover(root: Branch, tokens: readonly Token[], words: readonly string[]): readonly Element[] {
  const size = tokens.length;
  const scores: number[] = [0];
  const by: (readonly Island[] | null)[] = [null];
  for (let at = 1; at <= size; at++) {
    scores.push(-1);
    by.push(null);
  }
  const fills = fillsOf(tokens, words);
  const reach = (to: number, score: number, group: readonly Island[] | null): void => {
    // Of equal covers the one whose longer phrase comes first is kept: "does your | left knee".
    if (score < (scores[to] ?? score + 1)) return;
    scores[to] = score;
    by[to] = group;
  };
  for (let at = 0; at < size; at++) {
    const score = scores[at] ?? 0;
    reach(at + 1, score, null);
    const islands = islandsAt(root, tokens, words, at, fills).filter((island) => holds(island, tokens));
    for (const group of byEnd(islands)) {
      const [best] = group;
      if (best === undefined) continue;
      const across = isAcross(tokens, at, best.to);
      // "Bent back" is one phrase, and "bent, back is fine" is not.
      if (across && hasTag(best, 'unbroken')) continue;
      reach(best.to, score + worth(best) - (across ? ACROSS : 0), group);
    }
  }
  return trace(by);
}

// "Feel that?" asks; "I feel that it gives" does not. "The bruise is on the left shin" tells of no drug.
const holds = (island: Island, tokens: readonly Token[]): boolean =>
  !(hasTag(island, 'closing') && !closes(tokens, island)) &&
  !(hasTag(island, 'place') && leadsToPlace(tokens, island.to)) &&
  !(hasTag(island, 'first-said') && !isBeside(tokens.slice(0, island.from))) &&
  !(hasTag(island, 'all-said') && !isWhole(tokens, island));

/** Words that may stand beside what asks something of the page without making another sentence of it. */
const BESIDE =
  /^(?:yes|yeah|yep|ok|okay|all|right|roger|affirm|affirmative|copy|and|then|please|thanks|thank|you)$/;

const isBeside = (tokens: readonly Token[]): boolean =>
  tokens.every(({ word, pause }) => pause !== 'ask' && BESIDE.test(word));

// "Both hold" is asked of the page; "both hold still", "it holds well" and "it holds?" are said to somebody.
const isWhole = (tokens: readonly Token[], { from, to }: Island): boolean =>
  tokens[to - 1]?.pause !== 'ask' && isBeside(tokens.slice(0, from)) && isBeside(tokens.slice(to));

const OF_PLACE =
  /^(the|his|her|their|its|my|your|this|that|left|right|both|either|each|top|one|other|front|back|inside|outside|inner|outer)$/;

function leadsToPlace(tokens: readonly Token[], to: number): boolean {
  const next = tokens[to];
  return next === undefined || tokens[to - 1]?.pause !== '' || OF_PLACE.test(next.word);
}

// Said with its question mark, or as all of its sentence.
function closes(tokens: readonly Token[], { from, to }: Island): boolean {
  const pause = tokens[to - 1]?.pause;
  const opens = from === 0 || /^(ask|end)$/.test(tokens[from - 1]?.pause ?? '');
  return pause === 'ask' || (opens && (pause === 'end' || to === tokens.length));
}

function isAcross(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to - 1; k++) if (tokens[k]?.pause === 'pause') return true;
  return false;
}

/** The islands that end at the same word together, the likely ones first. */
function byEnd(islands: readonly Island[]): readonly (readonly Island[])[] {
  const groups: Island[][] = [];
  for (const island of islands) {
    if (island.to <= island.from) continue;
    const group = groups.find(([one]) => one?.to === island.to);
    if (group === undefined) groups.push([island]);
    else group.push(island);
  }
  for (const group of groups) if (group.length > 1) group.sort(likelyFirst);
  return groups;
}

function trace(by: readonly (readonly Island[] | null)[]): readonly Element[] {
  const elements: Element[] = [];
  for (let at = by.length - 1; at > 0; ) {
    const islands = by[at] ?? null;
    const from = islands?.[0]?.from ?? at - 1;
    if (islands !== null) elements.push({ from, to: at, islands });
    at = from;
  }
  return elements.reverse();
}
