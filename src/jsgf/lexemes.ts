// Cuts grammar text into lexemes with their lines; what cannot be cut becomes a `fault` lexeme, and nothing is dropped
// but white space and comments.

export interface Lexeme {
  readonly type: 'token' | 'quoted' | 'rule' | 'tag' | 'weight' | 'mark' | 'fault';
  /** the content without its delimiters and escapes; for a fault, what is wrong and what to do */
  readonly text: string;
  readonly line: number;
}

/** A place in the text; cutting moves it on. */
interface Scan {
  readonly text: string;
  at: number;
  line: number;
}

const MARKS = ';=|*+()[]';
// A token ends at white space, at a sign with a meaning, or at a comment (Note, section 2.5): a single slash inside it
// is part of it, and a backslash takes the next sign as it is.
const TOKEN = /(?:[^\s;=|*+<>()[\]{}"\\/]|\\\S|\/(?![/*]))+/y;
const BLANKS = /[^\S\n]*/y;
const WEIGHT = /\/[ \t]*([^/\s]+)[ \t]*\//y;
const RULE = /<([^<>\s]*)>/y;
const OPEN_RULE = /<[\p{L}\p{N}_.-]*/uy;

const withoutEscapes = (text: string): string =>
  text.includes('\\') ? text.replace(/\\([\s\S])/g, '$1') : text;

function match({ text, at }: Scan, pattern: RegExp): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** Where what the pattern finds here ends; the place itself where it finds nothing. */
function past({ text, at }: Scan, pattern: RegExp): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** Moves to `end`, counting the lines on the way, and gives a lexeme of the line it began on. */
function take(scan: Scan, type: Lexeme['type'], text: string, end: number): Lexeme {
  const { line } = scan;
  const from = scan.at;
  scan.at = end;
  if (type === 'tag' || type === 'fault')
    for (let i = scan.text.indexOf('\n', from); i !== -1 && i < end; i = scan.text.indexOf('\n', i + 1))
      scan.line++;
  return { type, text, line };
}

function endOfLine({ text, at }: Scan): number {
  const end = text.indexOf('\n', at);
  return end === -1 ? text.length : end;
}

/** The position of the first unescaped `close` after the opening sign, before `limit`, or -1. */
function closing({ text, at }: Scan, close: string, limit: number): number {
  for (let i = at + 1; i < limit; i++) {
    const c = text[i];
    if (c === '\\') i++;
    else if (c === close) return i;
  }
  return -1;
}

function cutRule(scan: Scan): Lexeme {
  const rule = match(scan, RULE);
  if (rule) return take(scan, 'rule', rule[1] ?? '', scan.at + rule[0].length);
  const open = match(scan, OPEN_RULE)?.[0] ?? '<';
  const message = `${open} is not closed: a rule's name has no spaces and ends with >.`;
  return take(scan, 'fault', message, scan.at + open.length);
}

function cutTag(scan: Scan): Lexeme {
  const end = closing(scan, '}', scan.text.length);
  if (end === -1) return take(scan, 'fault', 'This tag is not closed: end it with }.', endOfLine(scan));
  return take(scan, 'tag', withoutEscapes(scan.text.slice(scan.at + 1, end)).trim(), end + 1);
}

function cutQuoted(scan: Scan): Lexeme {
  const end = closing(scan, '"', endOfLine(scan));
  if (end === -1)
    return take(
      scan,
      'fault',
      'This quoted token is not closed on its line: end it with ".',
      endOfLine(scan),
    );
  if (end === scan.at + 1)
    return take(scan, 'fault', 'This quoted token is empty: put a word in it, or write <NULL>.', end + 1);
  return take(scan, 'quoted', withoutEscapes(scan.text.slice(scan.at + 1, end)), end + 1);
}

function cutWeight(scan: Scan): Lexeme {
  const weight = match(scan, WEIGHT);
  if (weight) return take(scan, 'weight', weight[1] ?? '', scan.at + weight[0].length);
  const message = 'A lone / has no meaning here: a weight is written /2.5/, a comment // or /* */.';
  return take(scan, 'fault', message, scan.at + 1);
}

function cutToken(scan: Scan): Lexeme {
  const end = past(scan, TOKEN);
  if (end > scan.at) return take(scan, 'token', withoutEscapes(scan.text.slice(scan.at, end)), end);
  const message = `${scan.text[scan.at]} has no meaning here: write it in quotes, or take it out.`;
  return take(scan, 'fault', message, scan.at + 1);
}

function cutComment(scan: Scan): Lexeme | null {
  const close = scan.text.indexOf('*/', scan.at + 2);
  const comment = take(
    scan,
    'fault',
    'This comment is not closed: end it with */.',
    close === -1 ? scan.text.length : close + 2,
  );
  return close === -1 ? comment : null;
}

/** The lexeme at a place that is not white space; null for a comment. */
function cut(scan: Scan): Lexeme | null {
  const c = scan.text[scan.at] ?? '';
  if (MARKS.includes(c)) return take(scan, 'mark', c, scan.at + 1);
  if (c === '<') return cutRule(scan);
  if (c === '{') return cutTag(scan);
  if (c === '"') return cutQuoted(scan);
  if (c !== '/') return cutToken(scan);
  const next = scan.text[scan.at + 1];
  if (next === '*') return cutComment(scan);
  if (next !== '/') return cutWeight(scan);
  scan.at = endOfLine(scan);
  return null;
}

/** All lexemes of `text` from the position `at`, which stands on line `line`. */
export function lexemesOf(text: string, at: number, line: number): readonly Lexeme[] {
  const lexemes: Lexeme[] = [];
  const scan: Scan = { text, at, line };
  for (;;) {
    scan.at = past(scan, BLANKS);
    if (scan.at >= text.length) return lexemes;
    if (text[scan.at] === '\n') {
      scan.line++;
      scan.at++;
    } else {
      const lexeme = cut(scan);
      if (lexeme !== null) lexemes.push(lexeme);
    }
  }
}
