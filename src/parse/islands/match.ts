// Every island that begins at a word, by walking the phrase tree and the readers of numbers and times.

import type { Token } from '../token.ts';
import { type Fills, fillAt, mayBeFilled } from './fill.ts';
import type { FilledSlot, Island } from './island.ts';
import { afterWord, type Branch, branchesAfterSlots, type Ending } from './tree.ts';

/** The words of the tokens once, since every reader wants them. */
export const wordsOf = (tokens: readonly Token[]): readonly string[] => tokens.map((token) => token.word);

/** A phrase under way from `start` on. */
interface Way {
  readonly tokens: readonly Token[];
  readonly words: readonly string[];
  readonly start: number;
  readonly fills: Fills;
  readonly islands: Island[];
}

const NONE: readonly FilledSlot[] = [];

/** All islands that begin at `start`, any length. A phrase never runs over a full stop or a question mark. */
export function islandsAt(
  root: Branch,
  tokens: readonly Token[],
  words: readonly string[],
  start: number,
  fills: Fills,
): readonly Island[] {
  const islands: Island[] = [];
  follow({ tokens, words, start, fills, islands }, root, start, NONE);
  return islands;
}

function follow(way: Way, branch: Branch, at: number, slots: readonly FilledSlot[]): void {
  const { tokens, words, start, fills, islands } = way;
  if (!endsLoose(slots, words, at))
    for (const ending of branch.endings) islands.push(islandOf(ending, start, at, slots));
  if (at > start && breaks(tokens[at - 1])) return;
  const word = words[at];
  if (word === undefined) return;
  const next = afterWord(branch, word);
  if (next !== null) follow(way, next, at + 1, slots);
  if (!mayBeFilled(word, at > start)) return;
  for (const [slot, after] of branchesAfterSlots(branch))
    for (const filled of fillAt(fills, slot, at, at > start))
      follow(way, after, filled.to, [...slots, filled]);
}

// "Cap refill too" is no figure: a single homophone counts only where the phrase goes on after it ("too seconds").
function endsLoose(slots: readonly FilledSlot[], words: readonly string[], at: number): boolean {
  const last = slots.at(-1);
  return (
    last?.loose === true && last.to === at && (last.to - last.from === 1 || JOINING.has(words[at - 1] ?? ''))
  );
}

// "Pulse ninety too" says that it is ninety as well.
const JOINING: ReadonlySet<string> = new Set(['to', 'too', 'for']);

const breaks = (token: Token | undefined): boolean => token?.pause === 'end' || token?.pause === 'ask';

const islandOf = (
  { file, rule, tags, cost }: Ending,
  from: number,
  to: number,
  slots: readonly FilledSlot[],
): Island => ({ file, rule, from, to, tags, slots, cost });
