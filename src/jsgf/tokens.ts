// Every word that a grammar knows, whatever its place.

import type { Expansion, GrammarSet } from './shape.ts';

/** The tokens of all rules, each once. */
export const tokensIn = ({ rules }: GrammarSet): ReadonlySet<string> =>
  new Set([...rules.values()].flatMap(({ expansion }) => tokensOf(expansion)));

function tokensOf(expansion: Expansion): readonly string[] {
  switch (expansion.type) {
    case 'token':
      return [expansion.text];
    case 'sequence':
      return expansion.items.flatMap(tokensOf);
    case 'alternatives':
      return expansion.choices.flatMap(({ item }) => tokensOf(item));
    case 'optional':
    case 'repeat':
      return tokensOf(expansion.item);
    default:
      return [];
  }
}
