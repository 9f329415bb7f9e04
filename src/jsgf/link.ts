// Joins grammars into one set in which every reference is fully qualified, known and free of recursion.

import { cyclesOf } from './cycles.ts';
import { readGrammar } from './read.ts';
import { type Library, type Resolution, scopeOf } from './scope.ts';
import type {
  Expansion,
  Grammar,
  GrammarError,
  GrammarErrors,
  GrammarSet,
  GrammarSource,
  Rule,
} from './shape.ts';

export interface LinkOptions {
  /** answers null for a tag that means something, else what is wrong with it */
  readonly checkTag?: (tag: string) => string | null;
}

function failure(library: Library, reference: string, found: Exclude<Resolution, { kind: 'rule' }>): string {
  if (found.kind === 'private')
    return `<${found.name}> is private to its grammar: write "public" before it there.`;
  if (found.kind === 'ambiguous')
    return `<${reference}> may mean ${found.names.map((name) => `<${name}>`).join(' or ')}: write the one in full.`;
  const homes = [...library.values()].filter(({ rules }) => rules.get(reference)?.isPublic);
  const advice = homes.map(({ name }) => `import <${name}.${reference}>;`).join(' or ');
  return homes.length > 0
    ? `<${reference}> is not defined here: add ${advice}`
    : `<${reference}> is defined nowhere: correct its name, or define it.`;
}

interface Linking {
  readonly resolve: (name: string, line: number) => string;
  readonly checkTag: (tag: string, line: number) => void;
}

/**
 * The expansion with every reference resolved; what holds none stays the same object, and most of a grammar does. Groups
 * nest no deeper than the reader allows, so recursion is safe.
 */
function linkExpansion(expansion: Expansion, linking: Linking): Expansion {
  switch (expansion.type) {
    case 'sequence': {
      const items = mapKept(expansion.items, (item) => linkExpansion(item, linking));
      return items === expansion.items ? expansion : { type: 'sequence', items };
    }
    case 'alternatives': {
      const choices = mapKept(expansion.choices, (choice) => {
        const item = linkExpansion(choice.item, linking);
        return item === choice.item ? choice : { weight: choice.weight, item };
      });
      return choices === expansion.choices ? expansion : { type: 'alternatives', choices };
    }
    case 'optional':
    case 'repeat': {
      const item = linkExpansion(expansion.item, linking);
      return item === expansion.item ? expansion : { ...expansion, item };
    }
    case 'rule': {
      const name = linking.resolve(expansion.name, expansion.line);
      return { type: 'rule', name, line: expansion.line };
    }
    case 'tag':
      linking.checkTag(expansion.text, expansion.line);
      return expansion;
    default:
      return expansion;
  }
}

/** The list with every item changed, or the list itself where none is. */
function mapKept<T>(items: readonly T[], change: (item: T) => T): readonly T[] {
  let changed: T[] | null = null;
  for (let i = 0; i < items.length; i++) {
    const item = items[i] as T;
    const now = change(item);
    if (now !== item && changed === null) changed = items.slice(0, i);
    changed?.push(now);
  }
  return changed ?? items;
}

function gather(sources: readonly GrammarSource[], errors: GrammarError[]): Map<string, Grammar> {
  const library = new Map<string, Grammar>();
  for (const source of sources) {
    const read = readGrammar(source);
    if (read.kind === 'errors') {
      errors.push(...read.errors);
      continue;
    }
    const { name, file } = read.grammar;
    const first = library.get(name);
    if (first === undefined) library.set(name, read.grammar);
    else {
      const message = `${first.file} is a grammar named ${name} too: rename one of them.`;
      errors.push({ file, line: 1, rule: null, message });
    }
  }
  return library;
}

function recursionErrors(
  rules: ReadonlyMap<string, Rule>,
  references: ReadonlyMap<string, readonly string[]>,
) {
  return cyclesOf(references).map((cycle): GrammarError => {
    const rule = rules.get(cycle[0] ?? '');
    const way = [...cycle, ...cycle.slice(0, 1)].map((name) => `<${name}>`).join(' → ');
    const message = `The rule reaches itself: ${way}. Rules must not: say what repeats with * or +.`;
    return {
      file: rule?.file ?? '',
      line: rule?.line ?? 0,
      rule: rule?.name.split('.').at(-1) ?? null,
      message,
    };
  });
}

/**
 * Reads all sources and links them. Errors of reading come alone, since they would only cause others; else every
 * unknown, private or ambiguous reference, every recursion, and every tag that `checkTag` refuses is reported.
 * Grammars may import each other; only rules may not need each other.
 */
export function linkGrammars(
  sources: readonly GrammarSource[],
  options: LinkOptions = {},
): { kind: 'linked'; grammars: GrammarSet } | GrammarErrors {
  const errors: GrammarError[] = [];
  const library = gather(sources, errors);
  if (errors.length > 0) return { kind: 'errors', errors };

  const rules = new Map<string, Rule>();
  const references = new Map<string, string[]>();
  for (const grammar of library.values()) {
    const { file } = grammar;
    const scope = scopeOf(library, grammar);
    for (const { line, message } of scope.problems) errors.push({ file, line, rule: null, message });
    for (const rule of grammar.rules.values()) {
      const used: string[] = [];
      const report = (line: number, message: string) => errors.push({ file, line, rule: rule.name, message });
      const expansion = linkExpansion(rule.expansion, {
        resolve: (name, line) => {
          const found = scope.resolve(name);
          if (found.kind !== 'rule') {
            report(line, failure(library, name, found));
            return name;
          }
          used.push(found.name);
          return found.name;
        },
        checkTag: (tag, line) => {
          const refusal = options.checkTag?.(tag) ?? null;
          if (refusal !== null) report(line, `{${tag}}: ${refusal}`);
        },
      });
      const name = `${grammar.name}.${rule.name}`;
      rules.set(name, { ...rule, name, expansion });
      references.set(name, used);
    }
  }
  errors.push(...recursionErrors(rules, references));
  if (errors.length > 0) return { kind: 'errors', errors };
  const publicRules = [...rules.values()].filter(({ isPublic }) => isPublic).map(({ name }) => name);
  return { kind: 'linked', grammars: { rules, publicRules } };
}
