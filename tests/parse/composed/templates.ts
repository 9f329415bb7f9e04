// Sentences as responders build them, with blanks for places and findings, each beside all that it says and nothing more.
// Common practice, no source.

import { absent, clear, type Fill, type Place, said, there } from './fill.ts';
import type { Named, Paired } from './words.ts';

export interface Sentence {
  readonly talk: string;
  readonly means: readonly string[];
}

export type Template = (fill: Fill) => Sentence;

const say = (talk: string, ...means: readonly string[]): Sentence => ({ talk, means });
const of = ({ site }: Paired, side: string, [, finding]: Named, present: boolean): string =>
  said(finding, side, site, present);
const clearOf = ({ site }: Paired, side: string): string => said('abnormality', side, site, false);

const one = <T>(all: readonly T[]): T => all[0] as T;
const two = <T>(all: readonly T[]): readonly [T, T] => [all[0] as T, all[1] as T];
const three = <T>(all: readonly T[]): readonly [T, T, T] => [all[0] as T, all[1] as T, all[2] as T];
const other = (place: Place): Place => ({ ...place, side: place.side === 'left' ? 'right' : 'left' });

export const TEMPLATES: Readonly<Record<string, Template>> = {
  'a denied pair at one place': (fill) => {
    const [a] = fill.places(1) as [Place];
    const [n, m] = two(fill.nouns(2));
    return say(`no ${n[0]} or ${m[0]} of the ${a.say}`, absent(a, n), absent(a, m));
  },
  'two denials, each with its place after it': (fill) => {
    const [a, b] = two(fill.places(2));
    const [n, m] = two(fill.nouns(2));
    return say(`no ${n[0]} in the ${a.say}, no ${m[0]} in the ${b.say}`, absent(a, n), absent(b, m));
  },
  'two denials, each with its place before it': (fill) => {
    const [a, b] = two(fill.places(2));
    const [n, m] = two(fill.nouns(2));
    return say(`no ${a.say} ${n[0]}, no ${b.say} ${m[0]}`, absent(a, n), absent(b, m));
  },
  'the same denied twice, each with its place before it': (fill) => {
    const [a, b] = two(fill.places(2));
    const n = one(fill.nouns(1));
    return say(`no ${a.say} ${n[0]}, no ${b.say} ${n[0]}`, absent(a, n), absent(b, n));
  },
  'a place and what is not there': (fill) => {
    const a = one(fill.places(1));
    const [n, m] = two(fill.nouns(2));
    return say(`${a.say}, no ${n[0]}, no ${m[0]}`, absent(a, n), absent(a, m));
  },
  'two places, each with its verb': (fill) => {
    const [a, b] = two(fill.places(2));
    const [n, m] = two(fill.adjectives(2));
    return say(`${a.say} is ${n[0]}, ${b.say} is ${m[0]}`, there(a, n), there(b, m));
  },
  'one hurt but the other fine': (fill) => {
    const [a, b] = two(fill.places(2));
    const n = one(fill.adjectives(1));
    return say(`${a.say} ${n[0]} but the ${b.say} is fine`, there(a, n), clear(b));
  },
  'both named, then each side': (fill) => {
    const pair = fill.pair();
    const [x, y] = fill.sides();
    const [n, m] = two(fill.adjectives(2));
    return say(`${pair.many}: ${x} ${n[0]}, ${y} ${m[0]}`, of(pair, x, n, true), of(pair, y, m, true));
  },
  'both named, then each side with its verb': (fill) => {
    const pair = fill.pair();
    const [x, y] = fill.sides();
    const n = one(fill.adjectives(1));
    return say(`${pair.many}, ${x} is ${n[0]}, ${y} is fine`, of(pair, x, n, true), clearOf(pair, y));
  },
  'one side, none on the other': (fill) => {
    const pair = fill.pair();
    const [x, y] = fill.sides();
    const n = one(fill.nouns(1));
    return say(
      `${n[0]} on the ${x} ${pair.one}, none on the ${y}`,
      of(pair, x, n, true),
      of(pair, y, n, false),
    );
  },
  'one side and not the other': (fill) => {
    const pair = fill.pair();
    const [x, y] = fill.sides();
    const n = one(fill.adjectives(1));
    return say(`${x} ${pair.one} ${n[0]}, ${y} not`, of(pair, x, n, true), of(pair, y, n, false));
  },
  'what one place has and another has not': (fill) => {
    const [a, b] = two(fill.places(2));
    const [n, m, k] = three(fill.nouns(3));
    return say(
      `${a.say} has ${n[0]} and ${m[0]}, ${b.say} has no ${k[0]}`,
      there(a, n),
      there(a, m),
      absent(b, k),
    );
  },
  'one finding over two places': (fill) => {
    const [a, b] = two(fill.places(2));
    const n = one(fill.nouns(1));
    return say(`${n[0]} over the ${a.say} and the ${b.say}`, there(a, n), there(b, n));
  },
  'one denied but another there': (fill) => {
    const a = one(fill.sided(1));
    const n = one(fill.nouns(1));
    const m = one(fill.adjectives(1, [n[1]]));
    return say(`${a.say} no ${n[0]} but it's ${m[0]}`, absent(a, n), there(a, m));
  },
  'a question and a no': (fill) => {
    const a = one(fill.sided(1));
    const n = one(fill.adjectives(1));
    return say(`is your ${a.say} ${n[0]}? no`, absent(a, n));
  },
  'a question and a yes': (fill) => {
    const a = one(fill.places(1));
    const n = one(fill.nouns(1));
    return say(`any ${n[0]} in your ${a.say}? yes`, there(a, n));
  },
  'each finding before its place': (fill) => {
    const [a, b] = two(fill.sided(2));
    const [n, m] = two(fill.adjectives(2));
    return say(`${n[0]} ${a.say}, ${m[0]} ${b.say}`, there(a, n), there(b, m));
  },
  'three places called normal': (fill) => {
    const [a, b, c] = three(fill.places(3));
    return say(`${a.say}, ${b.say} and ${c.say} are normal`, clear(a), clear(b), clear(c));
  },
  'what cannot be seen': (fill) => {
    const a = one(fill.places(1));
    const n = one(fill.nouns(1));
    return say(`I can't see any ${n[0]} on the ${a.say}`, absent(a, n));
  },
  'there is, and there is': (fill) => {
    const [a, b] = two(fill.places(2));
    const [n, m] = two(fill.nouns(2));
    return say(`there's ${n[0]} on the ${a.say}, and ${m[0]} on the ${b.say}`, there(a, n), there(b, m));
  },
  'what a place is not': (fill) => {
    const a = one(fill.places(1));
    const n = one(fill.adjectives(1));
    return say(`the ${a.say} is not ${n[0]}`, absent(a, n));
  },
  'what the patient denies in two places': (fill) => {
    const [a, b] = two(fill.places(2));
    const n = one(fill.nouns(1));
    return say(`he denies ${n[0]} in the ${a.say} and the ${b.say}`, absent(a, n), absent(b, n));
  },
  'both sides': (fill) => {
    const pair = fill.pair();
    const n = one(fill.nouns(1));
    return say(`${n[0]} on both ${pair.many}`, of(pair, 'both', n, true));
  },
  'neither side': (fill) => {
    const pair = fill.pair();
    const n = one(fill.adjectives(1));
    return say(`neither ${pair.one} is ${n[0]}`, of(pair, 'both', n, false));
  },
  'a place with what is there and what is not': (fill) => {
    const a = one(fill.places(1));
    const [n, m, k] = three(fill.nouns(3));
    return say(`${a.say}, ${n[0]}, ${m[0]}, no ${k[0]}`, there(a, n), there(a, m), absent(a, k));
  },
  'none but at one place': (fill) => {
    const a = one(fill.places(1));
    const n = one(fill.nouns(1));
    return say(`no ${n[0]} except over the ${a.say}`, there(a, n));
  },
  'two places that are both so': (fill) => {
    const [a, b] = two(fill.sided(2));
    const n = one(fill.adjectives(1));
    return say(`${a.say} and ${b.say} are both ${n[0]}`, there(a, n), there(b, n));
  },
  'one side so and the other normal': (fill) => {
    const a = one(fill.sided(1));
    const n = one(fill.adjectives(1));
    const b = other(a);
    return say(`the ${a.say} is ${n[0]} and the ${b.side} one is normal`, there(a, n), clear(b));
  },
  'how it looks and feels': (fill) => {
    const a = one(fill.sided(1));
    const [n, m] = two(fill.adjectives(2));
    return say(`the ${a.say} looks ${n[0]} and feels ${m[0]}`, there(a, n), there(a, m));
  },
  'a look, and then what is there': (fill) => {
    const a = one(fill.places(1));
    const n = one(fill.nouns(1));
    return say(`palpating the ${a.say} | ${n[0]} here`, there(a, n));
  },
  'a look, and then what is not there': (fill) => {
    const a = one(fill.places(1));
    const n = one(fill.nouns(1));
    return say(`checking the ${a.say} now | no ${n[0]}`, absent(a, n));
  },
};
