// What was worked out, as a text that can be kept beside the page: numbers in columns, each as the step from the one before, which
// compress well.

import { type Counts, MANY } from '../network/counts.ts';
import type { Network } from '../network/network.ts';
import type { WorkedOut } from './work-out.ts';

/** Logarithms of chances are kept in steps of this, which is less than the recogniser tells apart. */
const STEP = 1e-4;
/** Counts are halves at the least. */
const HALF = 0.5;

interface NetworkText {
  readonly states: number;
  readonly end: number;
  /** from, to, chance, and of words their places in the list */
  readonly arcs: Columns;
  readonly silent: Columns;
}

type Columns = readonly (readonly number[])[];

interface Text extends Readonly<Record<'said' | 'anyOrder', NetworkText>> {
  /** of each word of the networks: itself and its ways to say it */
  readonly ways: readonly (readonly [word: string, ...ways: readonly string[]])[];
  readonly joined: readonly string[];
  readonly telling: readonly string[];
  readonly words: readonly string[];
  /** the first, second and third word's numbers, each as the step from the one before, and how often in halves */
  readonly exam: Columns;
  readonly besides: Columns;
  readonly heard: number;
}

export function textOf(worked: WorkedOut): string {
  const { said, anyOrder, ways, telling, words, exam, besides, heard } = worked;
  const joined = [...new Set([...said.arcs, ...anyOrder.arcs].map(({ word }) => word))];
  const places = new Map(joined.map((word, at) => [word, at]));
  const networkText = ({ states, end, arcs, silent }: Network): NetworkText => ({
    states,
    end,
    arcs: [
      steps(arcs.map(({ from }) => from)),
      steps(arcs.map(({ to }) => to)),
      arcs.map(({ chance }) => inSteps(chance)),
      arcs.map(({ word }) => places.get(word) ?? 0),
    ],
    silent: [
      steps(silent.map(({ from }) => from)),
      steps(silent.map(({ to }) => to)),
      silent.map(({ chance }) => inSteps(chance)),
    ],
  });
  const text: Text = {
    said: networkText(said),
    anyOrder: networkText(anyOrder),
    ways: [...ways].map(([word, all]) => [word, ...all]),
    joined,
    telling: [...telling],
    words,
    exam: columnsOf(exam),
    besides: columnsOf(besides),
    heard,
  };
  return JSON.stringify(text);
}

/** Throws where the text is none of `textOf`: it comes with the page and is never a person's. */
export function workedOutOf(text: string): WorkedOut {
  const { said, anyOrder, ways, joined, telling, words, exam, besides, heard } = JSON.parse(text) as Text;
  const networkIn = ({ states, end, arcs, silent }: NetworkText): Network => {
    const [from, to, chances = [], places = []] = arcs;
    const [froms, tos] = [summed(from), summed(to)];
    const [before, after, likely = []] = silent;
    const [befores, afters] = [summed(before), summed(after)];
    return {
      states,
      end,
      arcs: chances.map((chance, at) => ({
        from: froms[at] ?? 0,
        to: tos[at] ?? 0,
        word: joined[places[at] ?? 0] ?? '',
        chance: Math.exp(-chance * STEP),
      })),
      silent: likely.map((chance, at) => ({
        from: befores[at] ?? 0,
        to: afters[at] ?? 0,
        chance: Math.exp(-chance * STEP),
      })),
    };
  };
  return {
    kind: 'worked-out',
    said: networkIn(said),
    anyOrder: networkIn(anyOrder),
    ways: new Map(ways.map(([word, ...all]) => [word, all])),
    telling: new Set(telling),
    words,
    exam: countsIn(exam),
    besides: countsIn(besides),
    heard,
  };
}

const inSteps = (chance: number): number => Math.round(-Math.log(chance) / STEP);

const steps = (numbers: readonly number[]): readonly number[] =>
  numbers.map((number, at) => number - (numbers[at - 1] ?? 0));

function summed(all: readonly number[] = []): readonly number[] {
  let sum = 0;
  return all.map((step) => {
    sum += step;
    return sum;
  });
}

/** Sorted, so that the first word mostly stays the same, and often the second. */
function columnsOf({ keys, values }: Counts): Columns {
  const columns: [number[], number[], number[], number[]] = [[], [], [], []];
  let [first, second, third] = [0, 0, 0];
  keys.forEach((key, at) => {
    const own = [Math.floor(key / MANY / MANY), Math.floor(key / MANY) % MANY, key % MANY] as const;
    const [isFirst, isSecond] = [own[0] === first, own[0] === first && own[1] === second];
    columns[0].push(own[0] - first);
    columns[1].push(own[1] - (isFirst ? second : 0));
    columns[2].push(own[2] - (isSecond ? third : 0));
    columns[3].push((values[at] ?? 0) / HALF);
    [first, second, third] = own;
  });
  return columns;
}

function countsIn([firsts = [], seconds = [], thirds = [], counts = []]: Columns): Counts {
  let [first, second, third] = [0, 0, 0];
  const keys = Float64Array.from(counts, (_, at) => {
    const [one = 0, two = 0, three = 0] = [firsts[at], seconds[at], thirds[at]];
    if (one !== 0) [second, third] = [0, 0];
    else if (two !== 0) third = 0;
    first += one;
    second += two;
    third += three;
    return (first * MANY + second) * MANY + third;
  });
  return { keys, values: Float32Array.from(counts, (count) => count * HALF) };
}
