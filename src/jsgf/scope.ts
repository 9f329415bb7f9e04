// Which rule a name means inside one grammar: its own first, then an imported one, then one named in full.

import type { Grammar } from './shape.ts';

export type Resolution =
  | { readonly kind: 'rule'; readonly name: string }
  | { readonly kind: 'ambiguous'; readonly names: readonly string[] }
  | { readonly kind: 'private'; readonly name: string }
  | { readonly kind: 'unknown' };

/** All grammars of a set by their names. */
export type Library = ReadonlyMap<string, Grammar>;

export interface ImportProblem {
  readonly line: number;
  readonly message: string;
}

export interface Scope {
  readonly resolve: (reference: string) => Resolution;
  readonly problems: readonly ImportProblem[];
}

export const split = (name: string): readonly [grammar: string, rule: string] => {
  const dot = name.lastIndexOf('.');
  return [name.slice(0, Math.max(dot, 0)), name.slice(dot + 1)];
};

const publicNames = (grammar: Grammar): readonly string[] =>
  [...grammar.rules.values()].filter(({ isPublic }) => isPublic).map(({ name }) => name);

/** The rules that one import brings in, or what is wrong with it. */
function imported(library: Library, name: string): readonly string[] | string {
  const [grammarName, ruleName] = split(name);
  const grammar = library.get(grammarName);
  if (grammar === undefined)
    return `<${name}> is imported, but no grammar is named ${grammarName}: correct it, or add its file.`;
  if (ruleName === '*') return publicNames(grammar);
  const rule = grammar.rules.get(ruleName);
  if (rule === undefined)
    return `<${name}> is imported, but ${grammar.file} has no <${ruleName}>: correct the name.`;
  if (!rule.isPublic)
    return `<${name}> is private: write "public" before it in ${grammar.file}, line ${rule.line}.`;
  return [ruleName];
}

/** The Note's section 3.3: the names that imports make known, each with every rule it may mean. */
function importedNames(library: Library, grammar: Grammar) {
  const meanings = new Map<string, Set<string>>();
  const problems: ImportProblem[] = [];
  for (const { name, line } of grammar.imports) {
    const rules = imported(library, name);
    if (typeof rules === 'string') {
      problems.push({ line, message: rules });
      continue;
    }
    const [from] = split(name);
    const [, shortFrom] = split(from);
    for (const rule of rules)
      for (const known of [rule, `${shortFrom}.${rule}`])
        meanings.set(known, (meanings.get(known) ?? new Set()).add(`${from}.${rule}`));
  }
  return { meanings, problems };
}

function resolveFull(library: Library, grammar: Grammar, reference: string): Resolution {
  const [from, ruleName] = split(reference);
  const rule = library.get(from)?.rules.get(ruleName);
  if (rule === undefined) return { kind: 'unknown' };
  return rule.isPublic || from === grammar.name
    ? { kind: 'rule', name: reference }
    : { kind: 'private', name: reference };
}

/** Prepares the names of one grammar. A name given in full is never ambiguous, even beside an import's short name. */
export function scopeOf(library: Library, grammar: Grammar): Scope {
  const { meanings, problems } = importedNames(library, grammar);
  const resolve = (reference: string): Resolution => {
    if (grammar.rules.has(reference)) return { kind: 'rule', name: `${grammar.name}.${reference}` };
    const full = resolveFull(library, grammar, reference);
    if (full.kind === 'rule') return full;
    const [name, ...others] = meanings.get(reference) ?? [];
    if (name === undefined) return full;
    return others.length === 0 ? { kind: 'rule', name } : { kind: 'ambiguous', names: [name, ...others] };
  };
  return { resolve, problems };
}
