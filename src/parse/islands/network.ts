// The linked grammar as a network of states: what may come next after any part of any phrase.

import type { Expansion, GrammarSet } from '../../jsgf/index.ts';
import { splitWord } from '../split-word.ts';

/** A state is where a phrase has got to; `accept` is its end. */
export type State =
  | { readonly type: 'word'; readonly word: string; readonly next: State }
  | { readonly type: 'slot'; readonly rule: string; readonly next: State }
  | { readonly type: 'tag'; readonly text: string; readonly next: State }
  | { readonly type: 'cost'; readonly cost: number; readonly next: State }
  | { readonly type: 'fork'; readonly next: State[] }
  | { readonly type: 'accept'; readonly rule: string };

interface Build {
  readonly set: GrammarSet;
  readonly slots: ReadonlySet<string>;
  readonly seen: Map<string, Map<State, State>>;
}

/** The first states of every public rule in `rules`; rules named in `slots` are left open for a reader in code. */
export function buildNetwork(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): State[] {
  const build: Build = { set, slots, seen: new Map() };
  return rules.map((rule) => ruleState(build, rule, { type: 'accept', rule }));
}

// A rule used twice before the same state is built once: the network stays about as large as the files.
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
      return expansion.items.reduceRight((after, item) => enter(build, item, after), next);
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
      const loop: State & { type: 'fork' } = { type: 'fork', next: [] };
      const body = enter(build, expansion.item, loop);
      loop.next.push(body, next);
      return expansion.min === 0 ? loop : body;
    }
    case 'token':
      return splitWord(expansion.text)
        .flatMap((piece) => piece.words)
        .reduceRight<State>((after, word) => ({ type: 'word', word, next: after }), next);
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

// A weight below one makes a phrase less likely than another reading of the same words: it costs its logarithm.
function weigh(weight: number, state: State): State {
  return weight >= 1 ? state : { type: 'cost', cost: -Math.log10(weight), next: state };
}
