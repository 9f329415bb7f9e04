// Where every phrase that begins at a word ends, by walking the phrase tree and the readers of numbers and times.

import type { Token } from '../token.ts';
import { type Fills, fillAt, mayBeFilled } from './fill.ts';
import type { FilledSlot } from './island.ts';
import { afterWord, type Branch, branchesAfterSlots, type Ending } from './tree.ts';

/** The words of the tokens once, since every reader wants them. */
export const wordsOf = (tokens: readonly Token[]): readonly string[] => tokens.map((token) => token.word);

/** A phrase under way from `start` on. */
interface Way {
  readonly tokens: readonly Token[];
  readonly words: readonly string[];
  readonly start: number;
  readonly fills: Fills;
  readonly stops: Stop[];
}

/** A place where phrases end that came by the same way. */
export interface Stop {
  readonly to: number;
  readonly endings: readonly Ending[];
  readonly slots: readonly FilledSlot[];
}

const NONE: readonly FilledSlot[] = [];

/** Where phrases end that begin at `start`, any length. A phrase never runs over a full stop or a question mark. */
export function stopsFrom(
  root: Branch,
  tokens: readonly Token[],
  words: readonly string[],
  start: number,
  fills: Fills,
): readonly Stop[] {
  const stops: Stop[] = [];
  follow({ tokens, words, start, fills, stops }, root, start, NONE);
  return stops;
}

function follow(way: Way, branch: Branch, at: number, slots: readonly FilledSlot[]): void {
  const { tokens, words, start, fills, stops } = way;
  const { endings } = branch;
  if (at > start && endings.length > 0 && !endsLoose(slots, words, at))
    stops.push({ to: at, endings, slots });
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
  if (last?.to === at && last.to - last.from === 1 && isPartOfHour(words, last.from)) return true;
  return (
    last?.loose === true && last.to === at && (last.to - last.from === 1 || JOINING.has(words[at - 1] ?? ''))
  );
}

// "Gave aspirin half an hour ago": so long ago, and no half of anything.
const isPartOfHour = (words: readonly string[], at: number): boolean =>
  (words[at] === 'half' && words[at + 1] === 'an' && words[at + 2] === 'hour') ||
  (words[at] === 'quarter' && words[at + 1] === 'of' && words[at + 3] === 'hour');

// "Pulse ninety too" says that it is ninety as well.
const JOINING: ReadonlySet<string> = new Set(['to', 'too', 'for']);

const breaks = (token: Token | undefined): boolean => token?.pause === 'end' || token?.pause === 'ask';
