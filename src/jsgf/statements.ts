// Cuts lexemes into statements at each `;`, and finds where one was forgotten, so that one slip gives one error.

import type { Lexeme } from './lexemes.ts';

export interface Statement {
  /** without the final `;` and without faults */
  readonly lexemes: readonly Lexeme[];
  readonly faults: readonly Lexeme[];
  readonly line: number;
  /** the rule it defines, as far as can be seen */
  readonly rule: string | null;
  /** the line on which a `;` is missing, or null */
  readonly unended: number | null;
}

const isMark = (lexeme: Lexeme | undefined, mark: string): boolean =>
  lexeme?.type === 'mark' && lexeme.text === mark;
// "private" is no word of the format, but people write it; the reader says so, and the statement is whole until then.
const isScope = (lexeme: Lexeme | undefined): boolean =>
  lexeme?.type === 'token' && (lexeme.text === 'public' || lexeme.text === 'private');

function statement(all: readonly Lexeme[], ended: boolean): Statement {
  const faults = all.filter(({ type }) => type === 'fault');
  const lexemes = faults.length === 0 ? all : all.filter(({ type }) => type !== 'fault');
  const name = isScope(lexemes[0]) ? lexemes[1] : lexemes[0];
  return {
    lexemes,
    faults,
    line: all[0]?.line ?? 0,
    rule: name?.type === 'rule' ? name.text : null,
    unended: ended ? null : (lexemes.at(-1)?.line ?? null),
  };
}

/** The statements in the order written. A second `<name> =` before a `;` begins a statement of its own. */
export function statementsOf(lexemes: readonly Lexeme[]): readonly Statement[] {
  const statements: Statement[] = [];
  let from = 0;
  lexemes.forEach((lexeme, at) => {
    if (isMark(lexeme, ';')) {
      statements.push(statement(lexemes.slice(from, at), true));
      from = at + 1;
    } else if (isMark(lexeme, '=') && lexemes[at - 1]?.type === 'rule') {
      const start = isScope(lexemes[at - 2]) ? at - 2 : at - 1;
      if (start > from) {
        statements.push(statement(lexemes.slice(from, start), false));
        from = start;
      }
    }
  });
  if (from < lexemes.length) statements.push(statement(lexemes.slice(from), false));
  return statements;
}
