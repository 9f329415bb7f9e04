// The best cover of an utterance by islands: long phrases before short ones, likely before unlikely, none overlapping.

import type { Token } from '../token.ts';
import { HOLDS } from './bounds.ts';
import { fillsOf } from './fill.ts';
import type { FilledSlot, Island } from './island.ts';
import { type Stop, stopsFrom } from './match.ts';
import { isOfNow } from './now-first.ts';
import type { Branch, Ending } from './tree.ts';

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

/** Phrases over the same words, of which none was made an island yet: few of them come to stand in the best cover. */
interface Group {
  readonly from: number;
  readonly to: number;
  readonly stops: Stop[];
}

/** The elements in the order spoken; words between them are known to no phrase. Linear in the number of words. */
export function cover(root: Branch, tokens: readonly Token[], words: readonly string[]): readonly Element[] {
  const size = tokens.length;
  const scores: number[] = [0];
  const by: (Group | null)[] = [null];
  for (let at = 1; at <= size; at++) {
    scores.push(-1);
    by.push(null);
  }
  const fills = fillsOf(tokens, words);
  const reach = (to: number, score: number, group: Group | null): void => {
    // Of equal covers the one whose longer phrase comes first is kept: "does your | left knee".
    if (score < (scores[to] ?? score + 1)) return;
    scores[to] = score;
    by[to] = group;
  };
  for (let at = 0; at < size; at++) {
    const score = scores[at] ?? 0;
    reach(at + 1, score, null);
    for (const group of byEnd(at, stopsFrom(root, tokens, words, at, fills))) {
      const best = likeliest(group, tokens);
      if (best === null) continue;
      const across = isAcross(tokens, at, group.to);
      // "Bent back" is one phrase, and "bent, back is fine" is not.
      if (across && best.bounds.includes('unbroken')) continue;
      if (across && isAnsweringNo(tokens, at, best.file)) continue;
      reach(group.to, score + worth(group, best) - (across ? ACROSS : 0), group);
    }
  }
  return trace(by, tokens);
}

const worth = ({ from, to }: Group, { cost }: Pick<Ending, 'cost'>): number =>
  WORD * (to - from) - EACH - COST * cost;

/** The phrases that end at the same word together. */
function byEnd(from: number, stops: readonly Stop[]): readonly Group[] {
  const groups: Group[] = [];
  for (const stop of stops) {
    const group = groups.find(({ to }) => to === stop.to);
    if (group === undefined) groups.push({ from, to: stop.to, stops: [stop] });
    else group.stops.push(stop);
  }
  return groups;
}

/** The first of the most likely phrases that hold; null where none does. */
function likeliest(group: Group, tokens: readonly Token[]): Ending | null {
  let best: Ending | null = null;
  for (const { endings, slots } of group.stops)
    for (const ending of endings)
      if (holds(ending, group, tokens, slots) && (best === null || worth(group, ending) > worth(group, best)))
        best = ending;
  return best;
}

/** The phrases that hold as islands, the likely ones first. */
function islandsOf(group: Group, tokens: readonly Token[]): readonly Island[] {
  const islands: Island[] = [];
  for (const { endings, slots } of group.stops)
    for (const ending of endings)
      if (holds(ending, group, tokens, slots)) islands.push(islandOf(group, ending, slots));
  return islands.length < 2 ? islands : islands.sort((a, b) => worth(group, b) - worth(group, a));
}

const islandOf = (
  { from, to }: Group,
  { file, rule, tags, cost }: Ending,
  slots: readonly FilledSlot[],
): Island => ({ file, rule, from, to, tags, slots, cost });

function holds(
  { bounds, tags }: Ending,
  group: Group,
  tokens: readonly Token[],
  slots: readonly FilledSlot[],
): boolean {
  if (isOfNow(tags, slots, tokens, group.from)) return false;
  return bounds.length === 0 || bounds.every((bound) => HOLDS[bound](tokens, group, { tags, slots }));
}

// "No, no allergies", "no, pulse is there": before its pause a "no" answers, and denies nothing that follows.
const isAnsweringNo = (tokens: readonly Token[], at: number, file: string): boolean =>
  tokens[at]?.word === 'no' && tokens[at].pause === 'pause' && file !== 'talk' && file !== 'commands';

function isAcross(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to - 1; k++) if (tokens[k]?.pause === 'pause') return true;
  return false;
}

function trace(by: readonly (Group | null)[], tokens: readonly Token[]): readonly Element[] {
  const elements: Element[] = [];
  for (let at = by.length - 1; at > 0; ) {
    const group = by[at] ?? null;
    if (group !== null) elements.push({ from: group.from, to: at, islands: islandsOf(group, tokens) });
    at = group?.from ?? at - 1;
  }
  return elements.reverse();
}
