// Words that follow each other in a network with no choice between them, joined into one, so that no state is needed between
// them; and what was heard of such a one parted into its words again.

import { FRAMES, type HeardWord } from '../engine/decoder.ts';
import { withStatesNumbered } from './fewer-states.ts';
import type { Network } from './network.ts';
import { byState } from './one-way.ts';
import type { LikelyArc } from './word-graph.ts';

/** The phones of each way to say a word. */
export type WaysToSay = (word: string) => readonly string[];

export interface JoinedWords {
  readonly network: Network;
  /** of a word of that network, joined or not */
  readonly waysToSay: WaysToSay;
}

/** Stands between the words of a joined one, and in no word of the grammar. */
export const JOIN = '_';
/** Before these there is often a pause, for which a joined word has no room. */
const AFTER_PAUSE = new Set('and or but with then when because'.split(' '));
/** Joined words of more ways to say or of more words are too dear, and so is a second part that comes after more firsts. */
const MOST_WAYS = 6;
const MOST_WORDS = 4;
const MOST_FIRST = 4;

/** Of joined words, by the ways to say each. */
export const waysOfJoined =
  (waysToSay: WaysToSay): WaysToSay =>
  (joined) =>
    joined
      .split(JOIN)
      .map(waysToSay)
      .reduce((heads, tails) => heads.flatMap((head) => tails.map((tail) => `${head} ${tail}`)));

/** What can be said stays the same, but for a pause within joined words. */
export function joinedWords(network: Network, waysToSay: WaysToSay): JoinedWords {
  const ways = waysOfJoined(waysToSay);
  let joined = network;
  for (let next = joinedOnce(joined, ways); next !== null; next = joinedOnce(joined, ways)) joined = next;
  return { network: withStatesNumbered(joined), waysToSay: ways };
}

/** States with but one way on are left out, no two of them beside each other; null where there are none. */
function joinedOnce(network: Network, waysToSay: WaysToSay): Network | null {
  const { end, arcs, silent } = network;
  const isKept = new Set([0, end, ...silent.flatMap(({ from, to }) => [from, to])]);
  const leaving = byState(arcs, ({ from }) => from);
  const made: LikelyArc[] = [];
  const gone = new Set<LikelyArc>();
  for (const [at, before] of byState(arcs, ({ to }) => to)) {
    const [next, other] = leaving.get(at) ?? [];
    if (isKept.has(at) || next === undefined || other !== undefined || next.to === at) continue;
    if (before.length > MOST_FIRST || [next, ...before].some((arc) => gone.has(arc))) continue;
    if (!before.every(({ word }) => canJoin(word, next.word, waysToSay))) continue;
    for (const arc of [next, ...before]) gone.add(arc);
    for (const { from, word, chance } of before)
      made.push({ from, to: next.to, word: `${word}${JOIN}${next.word}`, chance: chance * next.chance });
  }
  return made.length === 0 ? null : { ...network, arcs: [...arcs.filter((arc) => !gone.has(arc)), ...made] };
}

function canJoin(first: string, second: string, waysToSay: WaysToSay): boolean {
  const [word = '', ...rest] = second.split(JOIN);
  if (AFTER_PAUSE.has(word) || first.split(JOIN).length + 1 + rest.length > MOST_WORDS) return false;
  return waysToSay(first).length * waysToSay(second).length <= MOST_WAYS;
}

/** What was heard, word for word as it is said: times and fit of joined words go by the number of their phones. */
export function partedWords<Heard extends HeardWord>(
  heard: readonly Heard[],
  waysToSay: WaysToSay,
): readonly Heard[] {
  return heard.flatMap((joined) => {
    const words = joined.word.split(JOIN);
    if (words.length === 1) return [joined];
    const phones = words.map((word) => (waysToSay(word)[0] ?? '').split(' ').length);
    const all = phones.reduce((sum, count) => sum + count, 0);
    const first = Math.round(joined.start * FRAMES);
    let said = 0;
    return words.map((word, index): Heard => {
      const from = Math.round((joined.frames * said) / all);
      said += phones[index] ?? 0;
      const to = Math.round((joined.frames * said) / all);
      const times = { start: (first + from) / FRAMES, end: (first + to) / FRAMES, frames: to - from };
      return { ...joined, word, ...times, fit: Math.round((joined.fit * (to - from)) / joined.frames) };
    });
  });
}
