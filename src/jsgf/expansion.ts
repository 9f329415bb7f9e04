// Reads the right side of a rule: sequences, alternatives with weights, groups, options, repeats and tags, with the
// precedence of the JSGF Note, section 4.7 (a repeat or a tag takes only the item before it).

import type { Lexeme } from './lexemes.ts';
import { isReference } from './name.ts';
import type { Choice, Expansion } from './shape.ts';

export interface Problem {
  readonly line: number;
  readonly message: string;
}

/** A place in the lexemes of one rule. The first problem ends the reading. */
interface Cursor {
  readonly lexemes: readonly Lexeme[];
  at: number;
  depth: number;
  problem: Problem | null;
}

const NOTHING: Expansion = { type: 'null' };
// Deeper nesting than anyone can follow; the limit keeps a broken file from exhausting the stack.
const DEEPEST = 100;

function fail(cursor: Cursor, message: string): Expansion {
  const line = (cursor.lexemes[cursor.at] ?? cursor.lexemes.at(-1))?.line ?? 0;
  cursor.problem ??= { line, message };
  return NOTHING;
}

const isMark = (lexeme: Lexeme | undefined, marks: string): boolean =>
  lexeme?.type === 'mark' && marks.includes(lexeme.text);

const asWritten = (lexeme: Lexeme): string => (lexeme.type === 'weight' ? `/${lexeme.text}/` : lexeme.text);

function readGroup(cursor: Cursor, open: Lexeme): Expansion {
  const close = open.text === '(' ? ')' : ']';
  if (++cursor.depth > DEEPEST)
    return fail(cursor, 'Groups are nested too deep: give an inner one a rule of its own.');
  const content = readAlternatives(cursor);
  cursor.depth--;
  if (!isMark(cursor.lexemes[cursor.at], close))
    return fail(cursor, `The ${open.text} is not closed: add ${close}.`);
  cursor.at++;
  return open.text === '(' ? content : { type: 'optional', item: content };
}

function readReference(cursor: Cursor, { text: name, line }: Lexeme): Expansion {
  if (name === 'NULL') return NOTHING;
  if (name === 'VOID') return { type: 'void' };
  if (isReference(name)) return { type: 'rule', name, line };
  cursor.at--;
  return fail(cursor, `<${name}> is no rule's name: use letters, digits and hyphens, without spaces.`);
}

/** One item without what follows it; null where no item can begin. */
function readAtom(cursor: Cursor): Expansion | null {
  const lexeme = cursor.lexemes[cursor.at];
  if (lexeme === undefined || isMark(lexeme, '|)]')) return null;
  cursor.at++;
  // A token's lexeme has the shape of its expansion already, and tokens are most of a grammar.
  if (lexeme.type === 'token') return lexeme as Lexeme & { type: 'token' };
  if (lexeme.type === 'quoted') return { type: 'token', text: lexeme.text, line: lexeme.line };
  if (lexeme.type === 'rule') return readReference(cursor, lexeme);
  if (isMark(lexeme, '([')) return readGroup(cursor, lexeme);
  cursor.at--;
  if (lexeme.type === 'tag')
    return fail(
      cursor,
      `The tag {${lexeme.text}} follows nothing: put it behind what it is about, or behind <NULL>.`,
    );
  if (lexeme.type === 'weight')
    return fail(cursor, `The weight ${asWritten(lexeme)} must stand first in its alternative.`);
  if (isMark(lexeme, '*+'))
    return fail(
      cursor,
      `${lexeme.text} must follow what it repeats, once: put that in ( ), or quote the sign.`,
    );
  return fail(cursor, `${asWritten(lexeme)} has no meaning here: is a ; missing before it?`);
}

function readSequence(cursor: Cursor): Expansion {
  const begun = readAtom(cursor);
  if (begun !== null && isMark(cursor.lexemes[cursor.at], '|)];')) return begun;
  const items: Expansion[] = [];
  for (let atom = begun; atom !== null && cursor.problem === null; atom = readAtom(cursor)) {
    const sign = cursor.lexemes[cursor.at];
    if (isMark(sign, '*+')) {
      cursor.at++;
      items.push({ type: 'repeat', item: atom, min: sign?.text === '*' ? 0 : 1 });
    } else items.push(atom);
    for (let tag = cursor.lexemes[cursor.at]; tag?.type === 'tag'; tag = cursor.lexemes[++cursor.at])
      items.push({ type: 'tag', text: tag.text, line: tag.line });
  }
  const [first] = items;
  if (first === undefined) return fail(cursor, 'Something to say is missing here: add it, or write <NULL>.');
  return items.length === 1 ? first : { type: 'sequence', items };
}

function readWeight(cursor: Cursor): number {
  const lexeme = cursor.lexemes[cursor.at];
  if (lexeme?.type !== 'weight') return 1;
  if (!/^(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?[fF]?$/.test(lexeme.text))
    fail(cursor, `The weight ${asWritten(lexeme)} is no number from 0 up: write it like /2.5/.`);
  cursor.at++;
  return Number.parseFloat(lexeme.text);
}

function readAlternatives(cursor: Cursor): Expansion {
  const choices: Choice[] = [];
  const start = cursor.at;
  do {
    const weight = readWeight(cursor);
    choices.push({ weight, item: readSequence(cursor) });
  } while (cursor.problem === null && isMark(cursor.lexemes[cursor.at], '|') && ++cursor.at);
  if (cursor.problem === null && choices.every(({ weight }) => weight === 0)) {
    cursor.at = start;
    return fail(cursor, 'Every weight here is 0: give at least one alternative a weight above 0.');
  }
  const [first] = choices;
  return first !== undefined && choices.length === 1 ? first.item : { type: 'alternatives', choices };
}

/** Reads the lexemes between a rule's `=` and its `;`. A problem's line is that of the lexeme it was met at. */
export function readExpansion(lexemes: readonly Lexeme[]): { expansion: Expansion; problem: Problem | null } {
  const cursor: Cursor = { lexemes, at: 0, depth: 0, problem: null };
  const expansion = readAlternatives(cursor);
  const rest = lexemes[cursor.at];
  if (rest !== undefined) fail(cursor, `${asWritten(rest)} closes nothing: take it out, or open its group.`);
  return { expansion, problem: cursor.problem };
}
