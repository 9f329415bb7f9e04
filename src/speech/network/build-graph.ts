// A rule of the linked grammar as an open graph, each part of it as small as it can be.

import type { Expansion, Rule } from '../../jsgf/index.ts';
import { type LikelyGraph, withChances } from './chances.ts';
import { oneWay } from './one-way.ts';
import type { LikelyArc, Listening, OpenGraph, Way } from './word-graph.ts';

interface Build {
  readonly listening: Listening;
  readonly arcs: LikelyArc[];
  readonly silent: Way[][];
  /** by rule and the state after it: a rule used twice before the same state is built once */
  readonly built: Map<string, number>;
  /** small graphs of rules, by name, shared by all builds; null while nothing is to be made small */
  readonly parts: Map<string, LikelyGraph> | null;
  readonly sizes: Map<string, number>;
  /** the grammar whose own rules may stay open */
  readonly home: string;
}

// Homophones ("four arm") are for the text of other recognisers; heard here they would only take words from true ones.
const UNHEARD = /(^|\s)homophone(\s|$)/;
// Figures are written and not heard.
const FIGURE = /\d/;
/**
 * A rule of the home grammar with more words than this stays open: one whose lists of words loop would grow beyond
 * bounds when made one-way, since every state after which the list may begin again needs the whole list.
 */
const MOST_WORDS = 500;

/** The graph of a rule, named in full and of the set (else it throws). */
export function buildGraph(listening: Listening, rule: string): OpenGraph {
  return graphOf(listening, rule, new Map(), rule.slice(0, rule.lastIndexOf('.') + 1));
}

function graphOf(listening: Listening, name: string, parts: Build['parts'], home: string): OpenGraph {
  const empty = { arcs: [], silent: [], built: new Map(), sizes: new Map() };
  const build: Build = { ...empty, listening, parts, home };
  const end = state(build);
  const start = enter(build, ruleOf(build, name).expansion, end);
  return { start, end, arcs: build.arcs, silent: build.silent, states: build.silent.length };
}

const state = (build: Build): number => build.silent.push([]) - 1;

function ruleOf({ listening: { set } }: Build, name: string): Rule {
  const rule = set.rules.get(name);
  if (rule === undefined) throw new Error(`No rule is named <${name}> in this set.`);
  return rule;
}

/** A state from which the expansion leads to `next`. */
function enter(build: Build, expansion: Expansion, next: number): number {
  switch (expansion.type) {
    case 'null':
      return next;
    case 'void':
      return state(build);
    case 'tag':
      return UNHEARD.test(expansion.text) ? state(build) : next;
    case 'token': {
      const made = state(build);
      const word = expansion.text;
      if (!FIGURE.test(word) && build.listening.canHear(word))
        build.arcs.push({ from: made, to: next, word, chance: 1 });
      return made;
    }
    case 'sequence':
      return expansion.items.reduceRight((after, item) => enter(build, item, after), next);
    case 'optional':
      return fork(build, state(build), [
        { to: enter(build, expansion.item, next), weight: 1 },
        { to: next, weight: 1 },
      ]);
    case 'alternatives': {
      const heard = expansion.choices.filter(({ weight }) => weight > 0);
      const ways = heard.map(({ weight, item }) => ({ to: enter(build, item, next), weight }));
      return fork(build, state(build), ways);
    }
    case 'repeat': {
      const loop = state(build);
      const body = enter(build, expansion.item, loop);
      fork(build, loop, [
        { to: body, weight: 1 },
        { to: next, weight: 1 },
      ]);
      return expansion.min === 0 ? loop : body;
    }
    case 'rule': {
      const key = `${expansion.name} ${next}`;
      const known = build.built.get(key);
      if (known !== undefined) return known;
      const made = enterRule(build, expansion.name, next);
      build.built.set(key, made);
      return made;
    }
  }
}

/** Lets a state be left without a word; ways that cannot be said at all take no share. */
function fork(
  build: Build,
  from: number,
  ways: readonly { readonly to: number; readonly weight: number }[],
): number {
  const all = ways.reduce((sum, { weight }) => sum + weight, 0);
  for (const { to, weight } of ways) build.silent[from]?.push({ to, chance: weight / all });
  return from;
}

function enterRule(build: Build, name: string, next: number): number {
  const { parts, listening, home } = build;
  const expansion = ruleOf(build, name).expansion;
  const isHome = name.startsWith(home);
  if (parts === null || (isHome && sizeOf(build, expansion) > MOST_WORDS)) {
    return enter(build, expansion, next);
  }
  const part = parts.get(name) ?? small(graphOf(listening, name, null, home));
  parts.set(name, part);
  return copy(build, part, next);
}

const small = (open: OpenGraph): LikelyGraph => withChances(open, oneWay(open));

/** Puts a copy of a part before `next`. Where a part may end and may also go on, its last word leads to both. */
function copy(build: Build, { states, words, ends }: LikelyGraph, next: number): number {
  const goesOn = new Set(words.map(({ from }) => from));
  const places = Array.from({ length: states }, () => state(build));
  const place = (at: number): number => places[at] ?? next;
  // Where nothing is said after a word, its way on and its end share its chance as they share what came to it.
  for (const { from, to, word, chance } of words) {
    const end = ends.get(to) ?? 0;
    if (goesOn.has(to))
      build.arcs.push({
        from: place(from),
        to: place(to),
        word,
        chance: chance * (1 - Math.min(end, 0.999)),
      });
    if (end > 0)
      build.arcs.push({ from: place(from), to: next, word, chance: goesOn.has(to) ? chance * end : chance });
  }
  const empty = ends.get(0);
  if (empty === undefined) return place(0);
  return fork(build, state(build), [
    { to: place(0), weight: 1 - Math.min(empty, 0.999) },
    { to: next, weight: empty },
  ]);
}

/** Words written in an expansion and in all that it refers to. */
function sizeOf(build: Build, expansion: Expansion): number {
  switch (expansion.type) {
    case 'token':
      return 1;
    case 'sequence':
      return expansion.items.reduce((sum, item) => sum + sizeOf(build, item), 0);
    case 'alternatives':
      return expansion.choices.reduce((sum, { item }) => sum + sizeOf(build, item), 0);
    case 'optional':
    case 'repeat':
      return sizeOf(build, expansion.item);
    case 'rule': {
      const known = build.sizes.get(expansion.name);
      if (known !== undefined) return known;
      const size = sizeOf(build, ruleOf(build, expansion.name).expansion);
      build.sizes.set(expansion.name, size);
      return size;
    }
    default:
      return 0;
  }
}
