// All ways through words that were finished in a sound, from frame to frame: ways with the same last two words are one.

import type { WordExit } from '../engine/word-exits.ts';
import { EDGES, MANY } from '../network/counts.ts';
import type { Triples } from '../network/triples.ts';

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
export const CALM = 1 / 15;
/** Ways that are followed at once, and how much worse than the best one may be. */
const WAYS = 40;
const BEHIND = 80;
/** A word in its frames, with the numbers of its words. */
export interface Step {
  readonly exit: WordExit;
  readonly numbers: readonly number[];
}

/** Where a way stands between two words: all ways with the same last two words are one. */
export interface Stand {
  readonly first: number;
  readonly second: number;
  /** of the best way here, and of all together (calmed) */
  best: number;
  before: number;
  after: number;
  from: Stand | null;
  step: Step | null;
}

export interface Passed {
  readonly from: Stand;
  readonly to: Stand;
  readonly step: Step;
  readonly calm: number;
}

export interface Ways {
  /** in the order taken */
  readonly passed: readonly Passed[];
  /** where the best one ends, or null where none leads through; its score */
  readonly last: Stand | null;
  readonly score: number;
  /** the sum of all, calmed */
  readonly all: number;
}

/** All ways through the steps, which are by their first frame; they end behind the last. */
export function waysThrough(steps: readonly (readonly Step[])[], order: Triples): Ways {
  const stands = Array.from({ length: steps.length + 1 }, () => new Map<number, Stand>());
  standAt(stands[0], EDGES, EDGES, { best: 0, before: 0 });
  const passed = passAll(steps, stands, order);
  const [last, score, all] = endings(stands[steps.length], order);
  for (const { from, to, calm } of passed.toReversed()) from.after = sumOf(from.after, to.after + calm);
  return { passed, last, score, all };
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
    const groups = bySameWords(ahead);
    for (const from of here.slice(0, WAYS)) {
      if (from.best < least) break;
      for (const sameWords of groups) {
        const [{ exit, numbers }] = sameWords;
        let said = exit.word === '' ? (exit.noise ? NOISE : PAUSE) : 0;
        let [first, second] = [from.first, from.second];
        for (const number of numbers) {
          said += order.chanceOf(first, second, number);
          [first, second] = [second, number];
        }
        // One sentence may end there and the next begin, with a pause between the two or none.
        const ended = exit.noise || second === EDGES ? null : said + order.chanceOf(first, second, EDGES);
        for (const step of sameWords) {
          const after = stands[step.exit.last + 1];
          pass(passed, { from, to: standAt(after, first, second), step, said });
          if (ended !== null) pass(passed, { from, to: standAt(after, EDGES, EDGES), step, said: ended });
        }
      }
    }
  }
  return passed;
}

/** A word ends in many frames after its first, and has one chance after two others: looking that up took most of the time. */
function bySameWords(steps: readonly Step[]): readonly (readonly [Step, ...Step[]])[] {
  const groups = new Map<string, [Step, ...Step[]]>();
  for (const step of steps) {
    const { word, noise } = step.exit;
    const key = noise ? ' ' : word;
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [step]);
    else known.push(step);
  }
  return [...groups.values()];
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

/** The logarithm of the sum of what two logarithms stand for. */
function sumOf(one: number, other: number): number {
  const [less, more] = one < other ? [one, other] : [other, one];
  return less === Number.NEGATIVE_INFINITY ? more : more + Math.log1p(Math.exp(less - more));
}
