// The rules whose phrases are islands: public ones that no other rule is built from.

import type { Expansion, GrammarSet } from '../../jsgf/index.ts';

/** The names of the rules that stand for themselves; rules in `slots` are read in code and are none. */
export function rootRules(set: GrammarSet, slots: ReadonlySet<string>): readonly string[] {
  const inner = new Set<string>(slots);
  const note = (expansion: Expansion): void => {
    if (expansion.type === 'rule') inner.add(expansion.name);
    else if (expansion.type === 'sequence') expansion.items.forEach(note);
    else if (expansion.type === 'alternatives') for (const { item } of expansion.choices) note(item);
    else if (expansion.type === 'optional' || expansion.type === 'repeat') note(expansion.item);
  };
  for (const rule of set.rules.values()) note(rule.expansion);
  return set.publicRules.filter((name) => !inner.has(name) && !name.startsWith('numbers.'));
}
