// No rule takes any number of numbers or times one after another with no word between them: each may end at several words, so that a
// row of them, as of a telephone's number, has more ways to be read than there is time for.

import { expect, it } from 'vitest';
import { type Expansion, type GrammarSet, linkGrammars } from '../../src/jsgf/index.ts';
import { SLOTS } from '../../src/parse/islands/fill.ts';
import { checkTag } from '../../src/parse/tags.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';

/** Whether something can be said as slots alone, and whether as nothing at all. */
interface Can {
  readonly slots: boolean;
  readonly nothing: boolean;
}

/** Calls `found` with the line of the rule's own repetitions whose every turn may be a slot alone. */
function canBe(expansion: Expansion, rules: GrammarSet['rules'], found: () => void): Can {
  const of = (item: Expansion): Can => canBe(item, rules, found);
  switch (expansion.type) {
    case 'sequence': {
      const items = expansion.items.map(of);
      const nothing = items.every((item) => item.nothing);
      return { nothing, slots: !nothing && items.every((item) => item.nothing || item.slots) };
    }
    case 'alternatives': {
      const items = expansion.choices.map(({ item }) => of(item));
      return { nothing: items.some((item) => item.nothing), slots: items.some((item) => item.slots) };
    }
    case 'optional':
      return { nothing: true, slots: of(expansion.item).slots };
    case 'repeat': {
      const item = of(expansion.item);
      if (item.slots) found();
      return { nothing: item.nothing || expansion.min === 0, slots: item.slots };
    }
    case 'rule': {
      if (SLOTS.has(expansion.name)) return { nothing: false, slots: true };
      const rule = rules.get(expansion.name);
      return rule === undefined
        ? { nothing: false, slots: false }
        : canBe(rule.expansion, rules, () => undefined);
    }
    default:
      return { nothing: expansion.type !== 'token', slots: false };
  }
}

function rowsOf(set: GrammarSet): readonly string[] {
  const names: string[] = [];
  for (const [name, { expansion }] of set.rules)
    if (!SLOTS.has(name)) canBe(expansion, set.rules, () => names.push(name));
  return names;
}

const setOf = (sources: Parameters<typeof linkGrammars>[0]): GrammarSet => {
  const linked = linkGrammars(sources, { checkTag });
  if (linked.kind === 'errors') throw new Error('the grammar has errors');
  return linked.grammars;
};

it('is so in every rule of the grammar', () => {
  expect(rowsOf(setOf(grammarFiles()))).toEqual([]);
});

it('is seen where it is not so', () => {
  const made = (rule: string) =>
    setOf([
      ...grammarFiles().filter(({ file }) => file.endsWith('numbers.jsgf')),
      { file: 'made.jsgf', text: `#JSGF V1.0;\ngrammar made;\nimport <numbers.*>;\n${rule}` },
    ]);
  expect(rowsOf(made('public <row> = [a | <numbers.number>]* (shocks);'))).toEqual(['made.row']);
  expect(rowsOf(made('<one> = [the] <numbers.number>; public <row> = (<one>)+ shocks;'))).toEqual([
    'made.row',
  ]);
  expect(rowsOf(made('public <row> = (<numbers.number> times)* shocks;'))).toEqual([]);
});
