// Holds the reader of one grammar file to its promises: what is written is read, and every slip is named with its line.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Expansion, readGrammar } from '../../src/jsgf/index.ts';

const file = 'test.jsgf';
const read = (text: string) => readGrammar({ file, text });

/** The expansion of <x> in a grammar that holds only that rule. */
function expansion(body: string): Expansion {
  const result = read(`#JSGF V1.0;\ngrammar test;\n<x> = ${body};`);
  if (result.kind === 'errors') throw new Error(result.errors.map(({ message }) => message).join('\n'));
  const rule = result.grammar.rules.get('x');
  if (rule === undefined) throw new Error('no rule <x>');
  return rule.expansion;
}

function errors(text: string) {
  const result = read(text);
  return result.kind === 'errors' ? result.errors : [];
}

const ruleError = (body: string) => errors(`#JSGF V1.0;\ngrammar test;\n<x> = ${body};`)[0];

const token = (text: string): Expansion => ({ type: 'token', text, line: 3 });
const tag = (text: string): Expansion => ({ type: 'tag', text, line: 3 });
const rule = (name: string): Expansion => ({ type: 'rule', name, line: 3 });
const sequence = (...items: Expansion[]): Expansion => ({ type: 'sequence', items });
const alternatives = (...items: Expansion[]): Expansion => ({
  type: 'alternatives',
  choices: items.map((item) => ({ weight: 1, item })),
});

describe('the right side of a rule', () => {
  const rows: readonly (readonly [string, Expansion])[] = [
    ['hello', token('hello')],
    ['good morning', sequence(token('good'), token('morning'))],
    ['a | b c', alternatives(token('a'), sequence(token('b'), token('c')))],
    ['(a)', token('a')],
    ['(a | b) c', sequence(alternatives(token('a'), token('b')), token('c'))],
    ['[a]', { type: 'optional', item: token('a') }],
    ['[a | b]', { type: 'optional', item: alternatives(token('a'), token('b')) }],
    ['a*', { type: 'repeat', item: token('a'), min: 0 }],
    ['a +', { type: 'repeat', item: token('a'), min: 1 }],
    ['a b*', sequence(token('a'), { type: 'repeat', item: token('b'), min: 0 })],
    ['(a b)*', { type: 'repeat', item: sequence(token('a'), token('b')), min: 0 }],
    ['[a]+', { type: 'repeat', item: { type: 'optional', item: token('a') }, min: 1 }],
    ['a {one}', sequence(token('a'), tag('one'))],
    ['a {one} {two}', sequence(token('a'), tag('one'), tag('two'))],
    ['a* {some}', sequence({ type: 'repeat', item: token('a'), min: 0 }, tag('some'))],
    ['(a b) {t} c', sequence(sequence(token('a'), token('b')), tag('t'), token('c'))],
    ['a {x} | b {y}', alternatives(sequence(token('a'), tag('x')), sequence(token('b'), tag('y')))],
    ['<a.b.c> d', sequence(rule('a.b.c'), token('d'))],
    ['<NULL>', { type: 'null' }],
    ['<VOID>', { type: 'void' }],
    ['<NULL> {t}', sequence({ type: 'null' }, tag('t'))],
    ['a{t}<b>"c"d', sequence(token('a'), tag('t'), rule('b'), token('c'), token('d'))],
  ];
  it.each(rows)('reads %s', (body, expected) => {
    expect(expansion(body)).toEqual(expected);
  });

  it('keeps weights, and takes 1 where none is written', () => {
    expect(expansion('/10/ a | /2.5/ b | /.5e1/ c | /0/ d | e')).toEqual({
      type: 'alternatives',
      choices: [
        { weight: 10, item: token('a') },
        { weight: 2.5, item: token('b') },
        { weight: 5, item: token('c') },
        { weight: 0, item: token('d') },
        { weight: 1, item: token('e') },
      ],
    });
  });

  it('takes a slash inside a token as part of it', () => {
    expect(expansion('and/or 120/80')).toEqual(sequence(token('and/or'), token('120/80')));
  });

  const escapes: readonly (readonly [string, Expansion])[] = [
    ['"New York"', token('New York')],
    ['"a; <b> | {c} // d"', token('a; <b> | {c} // d')],
    ['"say \\"when\\""', token('say "when"')],
    ['"back\\\\slash"', token('back\\slash')],
    ['a\\;b', token('a;b')],
    ["isn't", token("isn't")],
    ['a { say \\} and \\\\ }', sequence(token('a'), tag('say } and \\'))],
    ['a {<b> | "c"; // d}', sequence(token('a'), tag('<b> | "c"; // d'))],
  ];
  it.each(escapes)('takes quotes and escapes in %s as the Note means them', (body, expected) => {
    expect(expansion(body)).toEqual(expected);
  });
});

describe('a grammar', () => {
  it('has its name, its imports and its rules with where they stand', () => {
    const result = read(
      [
        '#JSGF V1.0 utf-8 en;',
        '/** What a documentation comment says. @author nobody */',
        'grammar com.example.test;',
        'import <com.example.other.*>; // all of them',
        'import <com.example.more.thing>;',
        '/* between',
        '   the lines */',
        'public <first> = a;',
        '<second> =',
        '  b |',
        '  c;',
      ].join('\r\n'),
    );
    expect(result).toEqual({
      kind: 'grammar',
      grammar: {
        name: 'com.example.test',
        file,
        imports: [
          { name: 'com.example.other.*', line: 4 },
          { name: 'com.example.more.thing', line: 5 },
        ],
        rules: new Map([
          [
            'first',
            {
              name: 'first',
              isPublic: true,
              expansion: { type: 'token', text: 'a', line: 8 },
              file,
              line: 8,
            },
          ],
          [
            'second',
            {
              name: 'second',
              isPublic: false,
              expansion: {
                type: 'alternatives',
                choices: [
                  { weight: 1, item: { type: 'token', text: 'b', line: 10 } },
                  { weight: 1, item: { type: 'token', text: 'c', line: 11 } },
                ],
              },
              file,
              line: 9,
            },
          ],
        ]),
      },
    });
  });

  it.each(['<hello>', '<Zürich>', '<user_test>', '<$100>', '<1+2=3>', '<παβ>', '<a;b|c>', '<1to9>'])(
    'may call a rule %s',
    (name) => {
      const result = read(`#JSGF V1.0;\ngrammar test;\n${name} = a;`);
      expect(result.kind === 'grammar' && [...result.grammar.rules.keys()]).toEqual([name.slice(1, -1)]);
    },
  );

  it.each(['#JSGF V1.0;', '#JSGF V1.0 ISO8859-5;', '#JSGF V1.0 JIS ja;', '\uFEFF#JSGF V1.0 utf-8 en ;'])(
    'may begin with %s',
    (header) => {
      expect(read(`${header}\ngrammar test;`).kind).toBe('grammar');
    },
  );
});

describe('an error', () => {
  const rows: readonly (readonly [string, RegExp])[] = [
    ['', /missing here/],
    ['a | | b', /missing here/],
    ['a |', /missing here/],
    ['()', /missing here/],
    ['[]', /missing here/],
    ['(a | b', /\( is not closed/],
    ['[a)', /\[ is not closed/],
    ['a)', /closes nothing/],
    ['* a', /must follow what it repeats/],
    ['a**', /must follow what it repeats/],
    ['a {t} *', /must follow what it repeats/],
    ['{t} a', /follows nothing/],
    ['a /2/ b', /must stand first/],
    ['/many/ a | b', /no number/],
    ['/-1/ a | b', /no number/],
    ['/0/ a | /0/ b', /Every weight/],
    ['<a b', /not closed/],
    ['<a..b>', /no rule's name/],
    ['<>', /no rule's name/],
    ['"a', /quoted token is not closed/],
    ['""', /empty/],
    ['a {t', /tag is not closed/],
    ['a > b', /no meaning here/],
    ['a } b', /no meaning here/],
    ['a / b', /lone \//],
    ['a = b', /is a ; missing/],
  ];
  it.each(rows)('is found in "<x> = %s;" on its line and in its rule', (body, message) => {
    const error = ruleError(body);
    expect(error).toMatchObject({ file, line: 3, rule: 'x' });
    expect(error?.message).toMatch(message);
  });

  it('is found for groups nested deeper than anyone can follow', () => {
    expect(ruleError(`${'('.repeat(50_000)}a${')'.repeat(50_000)}`)?.message).toMatch(/too deep/);
    expect(ruleError(`${'('.repeat(50)}a${')'.repeat(50)}`)).toBeUndefined();
  });

  const files: readonly (readonly [string, string, number, RegExp])[] = [
    ['no header', 'grammar test;\n<x> = a;', 1, /must begin with its header/],
    ['a header without its end', '#JSGF V1.0\ngrammar test;\n<x> = a;', 1, /must begin with its header/],
    ['another version', '#JSGF V2.0;\ngrammar test;', 1, /Version 2\.0/],
    ['no name', '#JSGF V1.0;\n<x> = a;', 1, /has no name/],
    ['two names', '#JSGF V1.0;\ngrammar a;\ngrammar b;', 3, /name already/],
    ['a name with a space', '#JSGF V1.0;\ngrammar a b;', 2, /named by one word/],
    ['an import that is no name', '#JSGF V1.0;\ngrammar a;\nimport b.c;', 3, /An import names/],
    ['an import without a grammar', '#JSGF V1.0;\ngrammar a;\nimport <b>;', 3, /An import names/],
    [
      'an import after a rule',
      '#JSGF V1.0;\ngrammar a;\n<x> = a;\nimport <b.c>;',
      4,
      /before the first rule/,
    ],
    ['a rule defined twice', '#JSGF V1.0;\ngrammar a;\n<x> = a;\n<x> = b;', 4, /already on line 3/],
    ['a reserved name', '#JSGF V1.0;\ngrammar a;\n<NULL> = a;', 3, /fixed meaning/],
    ['a qualified name', '#JSGF V1.0;\ngrammar a;\n<b.c> = a;', 3, /cannot name a rule/],
    ['the word private', '#JSGF V1.0;\ngrammar a;\nprivate <x> = a;', 3, /Leave out "private"/],
    ['a missing ; before a rule', '#JSGF V1.0;\ngrammar a;\n<x> = a\npublic <y> = b;', 3, /; is missing/],
    ['a missing ; at the end', '#JSGF V1.0;\ngrammar a;\n<x> = a', 3, /; is missing/],
    ['a comment without its end', '#JSGF V1.0;\ngrammar a;\n<x> = a;\n/* b', 4, /comment is not closed/],
  ];
  it.each(files)('is found for %s', (_, text, line, message) => {
    const found = errors(text);
    expect(found).toHaveLength(1);
    expect(found[0]?.line).toBe(line);
    expect(found[0]?.message).toMatch(message);
  });

  it('does not hide the others of the file', () => {
    const found = errors('#JSGF V1.0;\ngrammar a;\n<x> = (a;\n<y> = b\n<z> = {t};\n<w> = c;');
    expect(found.map(({ line, rule: name }) => [line, name])).toEqual([
      [3, 'x'],
      [4, 'y'],
      [5, 'z'],
    ]);
  });

  it('is a value for any text whatever: the reader never throws', () => {
    const bits = [
      '#JSGF V1.0;',
      'grammar a;',
      '<x>',
      '=',
      '|',
      '(',
      ')',
      '[',
      ']',
      '*',
      '{',
      '}',
      '"',
      '/',
      '\\',
      ';',
      '\n',
      'a',
      '<',
      '/*',
      '/1/',
    ];
    const text = fc
      .array(fc.oneof(fc.constantFrom(...bits), fc.string({ maxLength: 3 })))
      .map((parts) => parts.join(' '));
    fc.assert(
      fc.property(text, (any) => {
        const result = read(any);
        expect(result.kind === 'grammar' || result.errors.length > 0).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
