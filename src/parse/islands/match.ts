// Every island that begins at a word, by walking the phrase tree and the readers of numbers and times.

import { readNumbers } from '../numbers/index.ts';
import { readTimes } from '../times/index.ts';
import type { Token } from '../token.ts';
import type { FilledSlot, Island } from './island.ts';
import { branchesAfterSlots, afterWord, type Branch, type Ending } from './tree.ts';

export const NUMBER_SLOT = 'numbers.number';
export const TIME_SLOT = 'times.time';
export const SLOTS: ReadonlySet<string> = new Set([NUMBER_SLOT, TIME_SLOT]);

/** The words of the tokens once, since every reader wants them. */
export const wordsOf = (tokens: readonly Token[]): readonly string[] => tokens.map((token) => token.word);

/** The numbers and times read so far in one utterance: many phrases ask for one at the same word. */
export type Fills = Map<string, readonly FilledSlot[]>;

/** All islands that begin at `start`, any length. A phrase never runs over a full stop or a question mark. */
export function islandsAt(
  root: Branch,
  tokens: readonly Token[],
  words: readonly string[],
  start: number,
  fills: Fills,
): readonly Island[] {
  const islands: Island[] = [];
  const walk = (branch: Branch, at: number, slots: readonly FilledSlot[]): void => {
    if (!endsLoose(slots, words, at))
      for (const ending of branch.endings) islands.push(islandOf(ending, start, at, slots));
    if (at > start && breaks(tokens[at - 1])) return;
    const word = words[at];
    if (word === undefined) return;
    const next = afterWord(branch, word);
    if (next !== null) walk(next, at + 1, slots);
    if (!mayBegin(word, at > start)) return;
    for (const [slot, after] of branchesAfterSlots(branch))
      for (const filled of fillOnce(fills, slot, tokens, words, at, at > start))
        walk(after, filled.to, [...slots, filled]);
  };
  walk(root, start, []);
  return islands;
}

// "Cap refill too" is no figure: a single homophone counts only where the phrase goes on after it ("too seconds").
function endsLoose(slots: readonly FilledSlot[], words: readonly string[], at: number): boolean {
  const last = slots.at(-1);
  return (
    last?.loose === true && last.to === at && (last.to - last.from === 1 || JOINING.test(words[at - 1] ?? ''))
  );
}

// "Pulse ninety too" says that it is ninety as well.
const JOINING = /^(to|too|for)$/;

// Reading a number or a time costs more than looking whether one can begin here.
const FIRST =
  /^(\d.*|zero|oh?|nought|naught|one|two|three|four|fower|five|fife|six|seven|eight|nine|niner|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|fou?rty|fifty|sixty|seventy|eighty|nine?ty|hundred|half|quarter|third|an?|couple|point|dozen|noon|midday|midnight|just|about|now|some|nearly|almost|around|approximately)$/;
const LOOSE = /^(won|to|too|for|tree|ate|oh)$/;

const mayBegin = (word: string, expected: boolean): boolean =>
  FIRST.test(word) || (expected && LOOSE.test(word));

const breaks = (token: Token | undefined): boolean => token?.pause === 'end' || token?.pause === 'ask';

function fillOnce(
  fills: Fills,
  slot: string,
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  expected: boolean,
): readonly FilledSlot[] {
  const key = `${slot} ${at} ${expected}`;
  const known = fills.get(key);
  if (known !== undefined) return known;
  const filled = fill(slot, tokens, words, at, expected);
  fills.set(key, filled);
  return filled;
}

function fill(
  slot: string,
  tokens: readonly Token[],
  words: readonly string[],
  at: number,
  expected: boolean,
): readonly FilledSlot[] {
  // No number and no time runs over a pause: "at sixteen twenty, one unit of blood" is twenty past four.
  const pause = tokens.findIndex((token, k) => k >= at && token.pause !== '');
  const near = pause < 0 ? words : words.slice(0, pause + 1);
  if (slot === TIME_SLOT)
    return readTimes(near, at).map(({ end, time }) => ({
      rule: slot,
      from: at,
      to: end,
      value: 0,
      time,
      loose: false,
    }));
  const strict = readNumbers(near, at);
  const loose = expected ? readNumbers(near, at, { loose: true }).filter((reading) => reading.loose) : [];
  // A homophone counts only where it makes the number longer ("ninety ate") or there is no other number.
  const longest = strict[0]?.end ?? at;
  const readings = [...loose.filter((reading) => reading.end > longest), ...strict];
  return readings.map(({ end, value, loose }) => ({
    rule: slot,
    from: at,
    to: end,
    value,
    time: null,
    loose,
  }));
}

const islandOf = (
  { file, rule, tags, cost }: Ending,
  from: number,
  to: number,
  slots: readonly FilledSlot[],
): Island => ({ file, rule, from, to, tags, slots, cost });
