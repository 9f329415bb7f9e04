// Lists everything that a small rule lets be said, each phrase with its tags.

import type { Expansion, GrammarSet } from './shape.ts';

export interface Phrase {
  /** the tokens in order; a quoted token is one word even with a space in it */
  readonly words: readonly string[];
  readonly tags: readonly string[];
}

const SILENCE: Phrase = { words: [], tags: [] };

const join = (a: Phrase, b: Phrase): Phrase => ({
  words: [...a.words, ...b.words],
  tags: [...a.tags, ...b.tags],
});

/** The phrases of an expansion, or null once there are more than `limit`. */
function expand(set: GrammarSet, expansion: Expansion, limit: number): readonly Phrase[] | null {
  switch (expansion.type) {
    case 'token':
      return [{ words: [expansion.text], tags: [] }];
    case 'tag':
      return [{ words: [], tags: [expansion.text] }];
    case 'null':
      return [SILENCE];
    case 'void':
      return [];
    case 'rule': {
      const rule = set.rules.get(expansion.name);
      if (rule === undefined) throw new Error(`No rule is named <${expansion.name}> in this set.`);
      return expand(set, rule.expansion, limit);
    }
    case 'optional':
    case 'repeat': {
      const once = expand(set, expansion.item, limit);
      return once === null || (expansion.type === 'repeat' && expansion.min === 1)
        ? once
        : [SILENCE, ...once];
    }
    case 'alternatives': {
      const all: Phrase[] = [];
      for (const { item } of expansion.choices) {
        const phrases = expand(set, item, limit);
        if (phrases === null || all.length + phrases.length > limit) return null;
        all.push(...phrases);
      }
      return all;
    }
    case 'sequence': {
      let all: readonly Phrase[] = [SILENCE];
      for (const item of expansion.items) {
        const next = expand(set, item, limit);
        if (next === null || all.length * next.length > limit) return null;
        all = all.flatMap((begun) => next.map((phrase) => join(begun, phrase)));
      }
      return all;
    }
  }
}

/**
 * All phrases of a rule in the order written, a repeat said at most once. The name must be fully qualified and of
 * this set (else it throws); a rule with more than `limit` phrases gives `too-many`.
 */
export function phrasesOf(
  set: GrammarSet,
  qualifiedName: string,
  limit = 10_000,
): { kind: 'phrases'; phrases: readonly Phrase[] } | { kind: 'too-many'; limit: number } {
  const phrases = expand(set, { type: 'rule', name: qualifiedName, line: 0 }, limit);
  return phrases === null || phrases.length > limit
    ? { kind: 'too-many', limit }
    : { kind: 'phrases', phrases };
}
