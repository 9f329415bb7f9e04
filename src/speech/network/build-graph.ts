// A rule of the linked grammar as an open graph, each part of it as small as it can be.

import type { Expansion, Rule } from '../../jsgf/index.ts';
import { oneWay } from './one-way.ts';
import type { Arc, Listening, OpenGraph, Way, WordGraph } from './word-graph.ts';

interface Build {
  readonly listening: Listening;
  readonly arcs: Arc[];
  readonly silent: Way[][];
  /** by rule and the state after it: a rule used twice before the same state is built once */
  readonly built: Map<string, number>;
  /** small graphs of rules, by name, shared by all builds; null while nothing is to be made small */
  readonly parts: Map<string, WordGraph> | null;
  readonly sizes: Map<string, number>;
  /** the grammar whose own rules may stay open */
  readonly home: string;
  /** whether what is being built was written in the home grammar */
  atHome: boolean;
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
  const atHome = name.startsWith(home);
  const empty = { arcs: [], silent: [], built: new Map(), sizes: new Map() };
  const build: Build = { ...empty, listening, parts, home, atHome };
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
      if (!FIGURE.test(word) && canHear(build, word)) build.arcs.push({ from: made, to: next, word });
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
      const least = build.atHome ? 0 : build.listening.leastWeight;
      const heard = expansion.choices.filter(({ weight }) => weight > 0 && weight >= least);
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

/** Words left out are those of other grammars; what the home grammar writes itself it means. */
const canHear = ({ listening, atHome }: Build, word: string): boolean =>
  listening.canHear(word) && (atHome || !listening.leftOut.has(word));

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
  const { parts, listening, home, atHome } = build;
  const expansion = ruleOf(build, name).expansion;
  const isHome = name.startsWith(home);
  if (parts === null || (isHome && sizeOf(build, expansion) > MOST_WORDS)) {
    build.atHome = isHome;
    const made = enter(build, expansion, next);
    build.atHome = atHome;
    return made;
  }
  const part = parts.get(name) ?? oneWay(graphOf(listening, name, null, home));
  parts.set(name, part);
  return copy(build, part, next);
}

/** Puts a copy of a part before `next`. Where a part may end and may also go on, its last word leads to both. */
function copy(build: Build, { states, arcs, ends }: WordGraph, next: number): number {
  const goesOn = new Set(arcs.map(({ from }) => from));
  const places = Array.from({ length: states }, () => state(build));
  const place = (at: number): number => places[at] ?? next;
  for (const { from, to, word } of arcs) {
    if (goesOn.has(to)) build.arcs.push({ from: place(from), to: place(to), word });
    if (ends.includes(to)) build.arcs.push({ from: place(from), to: next, word });
  }
  if (!ends.includes(0)) return place(0);
  return fork(
    build,
    state(build),
    [place(0), next].map((to) => ({ to, weight: 1 })),
  );
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
