// Reads one grammar file: every error of the file is reported with its line, or the grammar is whole.

import { readExpansion } from './expansion.ts';
import { readHeader } from './header.ts';
import { type Lexeme, lexemesOf } from './lexemes.ts';
import { isGrammarName, isReserved, isRuleName } from './name.ts';
import type { Grammar, GrammarError, GrammarErrors, GrammarSource, Import, Rule } from './shape.ts';
import { type Statement, statementsOf } from './statements.ts';

interface Draft {
  readonly file: string;
  name: string | null;
  readonly imports: Import[];
  readonly rules: Map<string, Rule>;
  readonly errors: GrammarError[];
}

function report(draft: Draft, line: number, message: string, rule: string | null = null): void {
  draft.errors.push({ file: draft.file, line, rule, message });
}

function readName(draft: Draft, { lexemes, line }: Statement): void {
  const [, name, rest] = lexemes;
  if (name?.type !== 'token' || rest !== undefined || !isGrammarName(name.text))
    report(draft, line, 'A grammar is named by one word, as in: grammar sites;');
  else if (draft.name !== null)
    report(draft, line, `The grammar has a name already, ${draft.name}: keep one of them.`);
  else if (draft.imports.length > 0 || draft.rules.size > 0)
    report(draft, line, 'The grammar must be named before its imports and rules: move this line up.');
  else draft.name = name.text;
}

function readImport(draft: Draft, { lexemes, line }: Statement): void {
  const [, what, rest] = lexemes;
  const dot = what?.text.lastIndexOf('.') ?? -1;
  const rule = what?.text.slice(dot + 1) ?? '';
  const wellFormed =
    what?.type === 'rule' &&
    rest === undefined &&
    isGrammarName(what.text.slice(0, Math.max(dot, 0))) &&
    (rule === '*' || isRuleName(rule));
  if (!wellFormed) report(draft, line, 'An import names a grammar and a rule, as in: import <sites.site>;');
  else if (draft.rules.size > 0)
    report(draft, line, 'Imports stand before the first rule: move this line up.');
  else draft.imports.push({ name: what.text, line });
}

function ruleNameProblem(draft: Draft, name: string): string | null {
  if (isReserved(name)) return `<${name}> has a fixed meaning and cannot be defined: choose another name.`;
  if (!isRuleName(name))
    return `<${name}> cannot name a rule: use letters, digits and hyphens, no dots or spaces.`;
  const first = draft.rules.get(name);
  if (first) return `<${name}> is defined already on line ${first.line}: join the two, or rename one.`;
  return null;
}

function readRule(draft: Draft, { lexemes, line }: Statement): void {
  const isPublic = lexemes[0]?.type === 'token' && lexemes[0].text === 'public';
  const start = isPublic ? 1 : 0;
  const name = lexemes[start];
  const equals = lexemes[start + 1];
  if (name?.type !== 'rule' || equals?.type !== 'mark' || equals.text !== '=') {
    const word = (lexemes[0] as Lexeme).text;
    const advice = word === 'private' ? ' Leave out "private": a rule without "public" is private.' : '';
    report(draft, line, `"${word}" begins no rule: a rule is written <name> = what is said;${advice}`);
    return;
  }
  const problem = ruleNameProblem(draft, name.text);
  if (problem !== null) report(draft, name.line, problem, name.text);
  const read = readExpansion(lexemes.slice(start + 2));
  if (read.problem !== null) report(draft, read.problem.line || name.line, read.problem.message, name.text);
  if (problem === null) {
    const rule = { name: name.text, isPublic, expansion: read.expansion, file: draft.file, line: name.line };
    draft.rules.set(name.text, rule);
  }
}

function readStatement(draft: Draft, statement: Statement): void {
  const { faults, lexemes, rule } = statement;
  for (const fault of faults) report(draft, fault.line, fault.text, rule);
  if (statement.unended !== null) report(draft, statement.unended, 'A ; is missing at the end here.', rule);
  const [first] = lexemes;
  if (first === undefined || faults.length > 0) return;
  if (first.type === 'token' && first.text === 'grammar') readName(draft, statement);
  else if (first.type === 'token' && first.text === 'import') readImport(draft, statement);
  else readRule(draft, statement);
}

/**
 * Reads a grammar as the JSGF Note (W3C, 5 June 2000) writes it. References are left as written: `linkGrammars`
 * resolves them. A file with any error gives no grammar, only its errors, in the order of their lines.
 */
export function readGrammar(source: GrammarSource): { kind: 'grammar'; grammar: Grammar } | GrammarErrors {
  const { file, text } = source;
  const draft: Draft = { file, name: null, imports: [], rules: new Map(), errors: [] };
  const header = readHeader(text);
  if (header.problem !== null) report(draft, 1, header.problem);
  for (const statement of statementsOf(lexemesOf(text, header.end, header.line)))
    readStatement(draft, statement);
  if (draft.name === null && draft.errors.length === 0)
    report(draft, 1, 'The grammar has no name: write one under the header, as in: grammar sites;');
  const { name, imports, rules } = draft;
  if (draft.errors.length > 0 || name === null)
    return { kind: 'errors', errors: draft.errors.toSorted((a, b) => a.line - b.line) };
  return { kind: 'grammar', grammar: { name, file, imports, rules } };
}
