// The linked grammar as a network of states, what may come next after any part of any phrase, built only as far as it is walked.

import type { Expansion, GrammarSet } from '../../jsgf/index.ts';
import { lateContraction } from '../contraction.ts';
import { splitWord } from '../split-word.ts';

/** A state is where a phrase has got to; `accept` is its end. */
export type State =
  | { readonly type: 'word'; readonly word: string; readonly next: State }
  | { readonly type: 'slot'; readonly rule: string; readonly next: State }
  | { readonly type: 'tag'; readonly text: string; readonly next: State }
  | { readonly type: 'cost'; readonly cost: number; readonly next: State }
  | { readonly type: 'fork'; readonly next: readonly State[] }
  /** where a repeat comes round: once more, or on */
  | { readonly type: 'loop'; readonly next: State[] }
  /** the rest of a sequence, built when a walk first comes to it */
  | Later
  | { readonly type: 'accept'; readonly rule: string };

interface Later {
  readonly type: 'later';
  readonly build: () => State;
  built: State | null;
}

interface Build {
  readonly set: GrammarSet;
  readonly slots: ReadonlySet<string>;
  readonly seen: Map<string, Map<State, State>>;
}

/** What a state put off stands for; the same state each time. */
export function open(later: Later): State {
  later.built ??= later.build();
  return later.built;
}

/** The first states of every public rule in `rules`; rules named in `slots` are left open for a reader in code. */
export function buildNetwork(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): State[] {
  const build: Build = { set, slots, seen: new Map() };
  return rules.map((rule) => ruleState(build, rule, { type: 'accept', rule }));
}

// A rule used twice before the same state is built once.
function ruleState(build: Build, name: string, next: State): State {
  if (build.slots.has(name)) return { type: 'slot', rule: name, next };
  const byNext = build.seen.get(name) ?? new Map<State, State>();
  build.seen.set(name, byNext);
  const known = byNext.get(next);
  if (known !== undefined) return known;
  const rule = build.set.rules.get(name);
  const state = rule === undefined ? { type: 'fork' as const, next: [] } : enter(build, rule.expansion, next);
  byNext.set(next, state);
  return state;
}

function enter(build: Build, expansion: Expansion, next: State): State {
  switch (expansion.type) {
    case 'sequence':
      return enterFrom(build, expansion.items, 0, next);
    case 'alternatives':
      return {
        type: 'fork',
        next: expansion.choices
          .filter(({ weight }) => weight > 0)
          .map(({ weight, item }) => weigh(weight, enter(build, item, next))),
      };
    case 'optional':
      return { type: 'fork', next: [enter(build, expansion.item, next), next] };
    case 'repeat': {
      const loop: State & { type: 'loop' } = { type: 'loop', next: [] };
      const body = enter(build, expansion.item, loop);
      loop.next.push(body, next);
      return expansion.min === 0 ? loop : body;
    }
    case 'token':
      return wordState(expansion.text, next);
    case 'rule':
      return ruleState(build, expansion.name, next);
    case 'tag':
      return { type: 'tag', text: expansion.text, next };
    case 'null':
      return next;
    case 'void':
      return { type: 'fork', next: [] };
  }
}

// All that a grammar holds is some hundred thousand states, and an examination walks a few thousand of them.
function enterFrom(build: Build, items: readonly Expansion[], at: number, next: State): State {
  const item = items[at];
  if (item === undefined) return next;
  if (at === items.length - 1) return enter(build, item, next);
  return enter(build, item, {
    type: 'later',
    build: () => enterFrom(build, items, at + 1, next),
    built: null,
  });
}

function wordState(text: string, next: State): State {
  const words = lateContraction(text) ?? splitWord(text).flatMap((piece) => piece.words);
  return words.reduceRight<State>((after, word) => ({ type: 'word', word, next: after }), next);
}

// A weight below one makes a phrase less likely than another reading of the same words: it costs its logarithm.
function weigh(weight: number, state: State): State {
  return weight >= 1 ? state : { type: 'cost', cost: -Math.log10(weight), next: state };
}
