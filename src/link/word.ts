// What a phone says when it asks, and the post's word to a phone: what it has, what is asked, who else is there.

import { NAME } from './subjects.ts';

/** A run of numbers, both ends in it. */
export type Run = readonly [from: number, to: number];

export interface Hello {
  readonly v: 1;
  /** names this very phone and browser: two that share one code are noticed by it */
  readonly install: string;
  /** the phone's clock, epoch ms */
  readonly clock: number;
  /** the number of its last message; 0 for none */
  readonly made: number;
}

export interface Question {
  readonly id: string;
  readonly record: string;
  readonly text: string;
  /** the post's clock, ISO 8601 */
  readonly at: string;
}

export interface Mate {
  readonly device: string;
  readonly name: string;
}

export interface Passed {
  readonly record: string;
  readonly to: string;
  readonly name: string;
}

export interface Word {
  readonly v: 1;
  /** the phone that the code is used by; another one must ask for a code of its own */
  readonly install: string;
  /** every message up to this one is written on the post's disk */
  readonly upTo: number;
  /** the hash after it, so that the phone sees whether they are its own */
  readonly hash: string;
  /** what is written beyond a gap */
  readonly beyond: readonly Run[];
  /** numbers whose message could not be read: their events must be sent again under new ones */
  readonly spoiled: readonly number[];
  /** what the post will not take in and why, in plain words; empty where all is well */
  readonly troubles: readonly string[];
  /** the post's clock, epoch ms */
  readonly clock: number;
  /** questions that no record of this phone holds yet */
  readonly questions: readonly Question[];
  /** records that this phone wrote and another one took over */
  readonly passed: readonly Passed[];
  /** the others of the incident that were heard of in the last minutes */
  readonly mates: readonly Mate[];
}

const isCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 0;
const isText = (value: unknown): value is string => typeof value === 'string';
const fields = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};

/** Null for what is none. */
export function readHello(value: unknown): Hello | null {
  const { v, install, clock, made } = fields(value);
  return v === 1 && isText(install) && install !== '' && typeof clock === 'number' && isCount(made)
    ? { v, install, clock, made }
    : null;
}

const isRun = (value: unknown): value is Run =>
  Array.isArray(value) &&
  value.length === 2 &&
  isCount(value[0]) &&
  isCount(value[1]) &&
  value[0] <= value[1];

export const isQuestion = (value: unknown): value is Question =>
  [fields(value)].every(({ id, record, text, at }) => [id, record, text, at].every(isText));

const isMate = (value: unknown): value is Mate =>
  [fields(value)].every(({ device, name }) => isText(device) && NAME.test(device) && isText(name));

const isPassed = (value: unknown): value is Passed =>
  [fields(value)].every(({ record, to, name }) => [record, to, name].every(isText));

const listOf = <T>(value: unknown, is: (one: unknown) => one is T): value is readonly T[] =>
  Array.isArray(value) && value.every(is);

/** Null for what is none. */
export function readWord(value: unknown): Word | null {
  const { v, install, upTo, hash, beyond, spoiled, troubles, clock, questions, passed, mates } =
    fields(value);
  if (v !== 1 || !isText(install) || !isCount(upTo) || !isText(hash) || typeof clock !== 'number')
    return null;
  if (!listOf(beyond, isRun) || !listOf(spoiled, isCount) || !listOf(troubles, isText)) return null;
  if (!listOf(questions, isQuestion) || !listOf(mates, isMate) || !listOf(passed, isPassed)) return null;
  return { v, install, upTo, hash, beyond, spoiled, troubles, clock, questions, passed, mates };
}

/** Numbers, in any order, as runs. */
export function runsOf(numbers: Iterable<number>): readonly Run[] {
  const runs: [number, number][] = [];
  for (const one of [...numbers].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && one <= last[1] + 1) last[1] = Math.max(last[1], one);
    else runs.push([one, one]);
  }
  return runs;
}

export const inRuns = (runs: readonly Run[], one: number): boolean =>
  runs.some(([from, to]) => from <= one && one <= to);

/** `4, 7 to 9` */
export const runsInWords = (runs: readonly Run[]): string =>
  runs.map(([from, to]) => (from === to ? `${from}` : `${from} to ${to}`)).join(', ');
