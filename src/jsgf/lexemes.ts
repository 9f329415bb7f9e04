// Cuts grammar text into lexemes with their lines; what cannot be cut becomes a `fault` lexeme, and nothing is dropped
// but white space and comments.

export interface Lexeme {
  readonly type: 'token' | 'quoted' | 'rule' | 'tag' | 'weight' | 'mark' | 'fault';
  /** the content without its delimiters and escapes; for a fault, what is wrong and what to do */
  readonly text: string;
  readonly line: number;
}

const MARKS = ';=|*+()[]';
// A token ends at white space, at a mark with a meaning, or at a comment (Note, section 2.5). A single `/` is part of it.
const TOKEN = /(?:[^\s;=|*+<>()[\]{}"\\/]|\\\S|\/(?![/*]))+/y;
const WEIGHT = /\/[ \t]*([^/\s]+)[ \t]*\//y;
const RULE = /<([^<>\s]*)>/y;
const OPEN_RULE = /<[\p{L}\p{N}_.-]*/uy;

const withoutEscapes = (text: string): string =>
  text.includes('\\') ? text.replace(/\\([\s\S])/g, '$1') : text;

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** The position of the first unescaped `close` from `at` on, or -1. */
function closing(text: string, at: number, close: string, stopAtLine: boolean): number {
  for (let i = at; i < text.length; i++) {
    const c = text[i];
    if (c === '\\') i++;
    else if (c === close) return i;
    else if (stopAtLine && c === '\n') return -1;
  }
  return -1;
}

function endOfLine(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return end === -1 ? text.length : end;
}

/** The lexeme at `at` (neither white space nor a comment) and where it ends. */
function cut(text: string, at: number, line: number): { lexeme: Lexeme; end: number } {
  const fault = (message: string, end: number) =>
    ({ lexeme: { type: 'fault', text: message, line }, end }) as const;
  const c = text[at] ?? '';
  if (MARKS.includes(c)) return { lexeme: { type: 'mark', text: c, line }, end: at + 1 };
  if (c === '<') {
    const rule = match(RULE, text, at);
    if (rule) return { lexeme: { type: 'rule', text: rule[1] ?? '', line }, end: at + rule[0].length };
    const open = match(OPEN_RULE, text, at)?.[0] ?? '<';
    return fault(`${open} is not closed: a rule's name has no spaces and ends with >.`, at + open.length);
  }
  if (c === '{') {
    const end = closing(text, at + 1, '}', false);
    if (end === -1) return fault('This tag is not closed: end it with }.', endOfLine(text, at));
    return {
      lexeme: { type: 'tag', text: withoutEscapes(text.slice(at + 1, end)).trim(), line },
      end: end + 1,
    };
  }
  if (c === '"') {
    const end = closing(text, at + 1, '"', true);
    if (end === -1)
      return fault('This quoted token is not closed on its line: end it with ".', endOfLine(text, at));
    if (end === at + 1)
      return fault('This quoted token is empty: put a word in it, or write <NULL>.', end + 1);
    return { lexeme: { type: 'quoted', text: withoutEscapes(text.slice(at + 1, end)), line }, end: end + 1 };
  }
  if (c === '/') {
    const weight = match(WEIGHT, text, at);
    if (weight)
      return { lexeme: { type: 'weight', text: weight[1] ?? '', line }, end: at + weight[0].length };
    return fault('A lone / has no meaning here: a weight is written /2.5/, a comment // or /* */.', at + 1);
  }
  const token = match(TOKEN, text, at);
  if (token)
    return { lexeme: { type: 'token', text: withoutEscapes(token[0]), line }, end: at + token[0].length };
  return fault(`${c} has no meaning here: write it in quotes, or take it out.`, at + 1);
}

const countLines = (text: string, from: number, to: number): number => {
  let count = 0;
  for (let i = text.indexOf('\n', from); i !== -1 && i < to; i = text.indexOf('\n', i + 1)) count++;
  return count;
};

/** All lexemes of `text` from the position `at`, which stands on line `line`. */
export function lexemesOf(text: string, at: number, line: number): readonly Lexeme[] {
  const lexemes: Lexeme[] = [];
  for (let i = at, n = line; i < text.length; ) {
    const c = text[i] ?? '';
    if (c === '\n') {
      n++;
      i++;
    } else if (c === ' ' || /\s/.test(c)) i++;
    else if (text.startsWith('//', i)) i = endOfLine(text, i);
    else if (text.startsWith('/*', i)) {
      const close = text.indexOf('*/', i + 2);
      const end = close === -1 ? text.length : close + 2;
      if (close === -1)
        lexemes.push({ type: 'fault', text: 'This comment is not closed: end it with */.', line: n });
      n += countLines(text, i, end);
      i = end;
    } else {
      const { lexeme, end } = cut(text, i, n);
      lexemes.push(lexeme);
      n += countLines(text, i, end);
      i = end;
    }
  }
  return lexemes;
}
