// Of all words that were finished on any way through two networks, those that fit the sound best in an order in which people say
// them; and of each, how likely it is against all others.

import { FRAMES, type HeardWord } from '../engine/decoder.ts';
import type { WordExit } from '../engine/word-exits.ts';
import { EDGES, type Triples } from '../network/triples.ts';

export interface LikelyWord extends HeardWord {
  /** 0 to 1: how likely it was said then, against whatever else may have been */
  readonly sure: number;
}

/** One unit of the decoder's log score, as a natural logarithm: it counts in powers of 1.0001, and keeps every 1,024th. */
const UNIT = 1024 * Math.log(1.0001);
/** The weight of the order of words against the sound. */
const ORDER = 9;
/** And for how sure a word is: "now tenderness" may sound so and be said, however much likelier a "no" is before it. */
const LIGHT = 5;
/** The package's chances of a pause and of a noise. */
const PAUSE = Math.log(0.005);
const NOISE = Math.log(1e-8);
/** The power of all, for how likely a word is: the sound's frames are not as many as they seem, since each is much like the next. */
const CALM = 1 / 15;
/** Ways that are followed at once, and how much worse than the best one may be. */
const WAYS = 40;
const BEHIND = 80;
/** What stands between joined words. */
const JOIN = '_';

/** A word in its frames, with the numbers of its words. */
interface Step {
  readonly exit: WordExit;
  readonly numbers: readonly number[];
}

/** Where a way stands between two words: all ways with the same last two words are one. */
interface Stand {
  readonly first: number;
  readonly second: number;
  /** of the best way here, and of all together (calmed) */
  best: number;
  before: number;
  after: number;
  from: Stand | null;
  step: Step | null;
}

interface Passed {
  readonly from: Stand;
  readonly to: Stand;
  readonly step: Step;
  readonly calm: number;
}

export interface Likeliest {
  /** in the order said; joined ones are still joined */
  readonly words: readonly LikelyWord[];
  /** the logarithm of its chance, but for what all ways through the same sound have in common */
  readonly score: number;
}

/** The likeliest way through; null where none leads through. */
export function likeliest(exits: readonly WordExit[], order: Triples): Likeliest | null {
  const end = exits.reduce((most, { last }) => Math.max(most, last), -1) + 1;
  if (end === 0) return null;
  const stands = Array.from({ length: end + 1 }, () => new Map<number, Stand>());
  standAt(stands[0], EDGES, EDGES, { best: 0, before: 0 });
  const passed = passAll(stepsByFrame(exits, order, end), stands, order);
  const [last, score, all] = endings(stands[end], order);
  if (last === null) return null;
  for (const { from, to, calm } of passed.toReversed()) from.after = sumOf(from.after, to.after + calm);
  const sureness = surenessOf(passed, all);
  const steps: Step[] = [];
  for (let at = last; at.step !== null && at.from !== null; at = at.from) steps.unshift(at.step);
  const words = steps.flatMap(({ exit: { word, first, last: to, fit } }) =>
    word === ''
      ? []
      : [
          {
            word,
            start: first / FRAMES,
            end: (to + 1) / FRAMES,
            frames: to + 1 - first,
            fit,
            sure: sureness(word, (first + to) / 2),
          },
        ],
  );
  return { words, score: score * CALM };
}

/** The likeliest way through these words, as they were heard, and the pauses between them. */
export const likeliestOf = (
  words: readonly HeardWord[],
  exits: readonly WordExit[],
  order: Triples,
): Likeliest | null => {
  const said = new Set(
    words.map(({ word, start, frames }) => `${word} ${Math.round(start * FRAMES)} ${frames}`),
  );
  const own = exits.filter(
    ({ word, first, last }) => word === '' || said.has(`${word} ${first} ${last + 1 - first}`),
  );
  return likeliest(own, order);
};

function stepsByFrame(exits: readonly WordExit[], order: Triples, end: number): readonly (readonly Step[])[] {
  const numbers = new Map<string, readonly number[]>([['', []]]);
  const numbersOf = (word: string): readonly number[] => {
    const known = numbers.get(word) ?? word.split(JOIN).map((one) => order.numberOf(one));
    numbers.set(word, known);
    return known;
  };
  const steps: Step[][] = Array.from({ length: end }, () => []);
  for (const exit of exits) steps[exit.first]?.push({ exit, numbers: numbersOf(exit.word) });
  return steps;
}

/** Follows all ways from frame to frame; gives the steps in the order taken. */
function passAll(
  steps: readonly (readonly Step[])[],
  stands: readonly Map<number, Stand>[],
  order: Triples,
): readonly Passed[] {
  const passed: Passed[] = [];
  for (const [frame, ahead] of steps.entries()) {
    if (ahead.length === 0) continue;
    const here = [...(stands[frame]?.values() ?? [])].toSorted((one, other) => other.best - one.best);
    const least = (here[0]?.best ?? 0) - BEHIND;
    for (const from of here.slice(0, WAYS)) {
      if (from.best < least) break;
      for (const step of ahead) {
        const { exit, numbers } = step;
        let said = exit.word === '' ? (exit.noise ? NOISE : PAUSE) : 0;
        let [first, second] = [from.first, from.second];
        for (const number of numbers) {
          said += order.chanceOf(first, second, number);
          [first, second] = [second, number];
        }
        const after = stands[exit.last + 1];
        pass(passed, { from, to: standAt(after, first, second), step, said });
        // One sentence may end there and the next begin, with a pause between the two or none.
        if (exit.noise || second === EDGES) continue;
        const ended = said + order.chanceOf(first, second, EDGES);
        pass(passed, { from, to: standAt(after, EDGES, EDGES), step, said: ended });
      }
    }
  }
  return passed;
}

function pass(
  passed: Passed[],
  { from, to, step, said }: Omit<Passed, 'calm'> & { readonly said: number },
): void {
  const fit = step.exit.fit * UNIT;
  const calm = (fit + LIGHT * said) * CALM;
  to.before = sumOf(to.before, from.before + calm);
  passed.push({ from, to, step, calm });
  const score = from.best + fit + ORDER * said;
  if (score <= to.best) return;
  to.best = score;
  to.from = from;
  to.step = step;
}

/** Numbers of words stay below this. */
const MANY = 2 ** 16;

function standAt(
  stands: Map<number, Stand> | undefined,
  first: number,
  second: number,
  begun: Partial<Stand> = {},
): Stand {
  const known = stands?.get(first * MANY + second);
  if (known !== undefined) return known;
  const never = Number.NEGATIVE_INFINITY;
  const made = { first, second, best: never, before: never, after: never, from: null, step: null, ...begun };
  stands?.set(first * MANY + second, made);
  return made;
}

/** The best stand at the end, and the sum of all. */
function endings(
  stands: ReadonlyMap<number, Stand> | undefined,
  order: Triples,
): readonly [last: Stand | null, score: number, all: number] {
  let [last, most, all]: [Stand | null, number, number] = [
    null,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const stand of stands?.values() ?? []) {
    const said = stand.second === EDGES ? 0 : order.chanceOf(stand.first, stand.second, EDGES);
    const ends = ORDER * said;
    stand.after = LIGHT * said * CALM;
    all = sumOf(all, stand.before + stand.after);
    if (stand.best + ends > most) [last, most] = [stand, stand.best + ends];
  }
  return [last, most, all];
}

/** Of a word at a frame: all ways on which it is said then. */
function surenessOf(passed: readonly Passed[], all: number): (word: string, frame: number) => number {
  const byWord = new Map<
    string,
    { readonly first: number; readonly last: number; readonly share: number }[]
  >();
  for (const { from, to, step, calm } of passed) {
    const share = Math.exp(from.before + calm + to.after - all);
    if (step.exit.word === '' || !(share > NO_SHARE)) continue;
    const { first, last } = step.exit;
    for (const word of step.exit.word.split(JOIN).map(withoutShortIs)) {
      const known = byWord.get(word) ?? [];
      known.push({ first, last, share });
      byWord.set(word, known);
    }
  }
  const sureOf = (word: string, frame: number): number =>
    (byWord.get(word) ?? [])
      .filter(({ first, last }) => first <= frame && last >= frame)
      .reduce((sum, { share }) => sum + share, 0);
  return (joined, frame) =>
    Math.min(1, ...joined.split(JOIN).map((word) => sureOf(withoutShortIs(word), frame)));
}

const NO_SHARE = 1e-6;

/** "Pulse's ninety" and "pulse is ninety" say the same. */
const withoutShortIs = (word: string): string => word.replace(/'s$/, '');

/** The logarithm of the sum of what two logarithms stand for. */
function sumOf(one: number, other: number): number {
  const [less, more] = one < other ? [one, other] : [other, one];
  return less === Number.NEGATIVE_INFINITY ? more : more + Math.log1p(Math.exp(less - more));
}
