// Holds the linking of grammars to its promises: every reference means one rule, and every doubt is refused.

import { describe, expect, it } from 'vitest';
import { type Expansion, linkGrammars } from '../../src/jsgf/index.ts';

const source = (name: string, ...lines: string[]) => ({
  file: `${name}.jsgf`,
  text: ['#JSGF V1.0;', `grammar ${name};`, ...lines].join('\n'),
});

type Source = ReturnType<typeof source>;

function linked(...sources: readonly Source[]) {
  const result = linkGrammars(sources);
  if (result.kind === 'errors') throw new Error(result.errors.map(({ message }) => message).join('\n'));
  return result.grammars;
}

function referenceOf(expansion: Expansion | undefined): string | null {
  return expansion?.type === 'rule' ? expansion.name : null;
}

const errorsOf = (sources: readonly Source[], checkTag?: (tag: string) => string | null) => {
  const result = linkGrammars(sources, checkTag ? { checkTag } : {});
  return result.kind === 'errors' ? result.errors : [];
};

const sites = source(
  'body.sites',
  'public <site> = arm | leg;',
  'public <side> = left | right;',
  '<word> = of;',
);

describe('a reference', () => {
  const rows: readonly (readonly [string, readonly string[], string])[] = [
    ['a rule of its own grammar', ['<x> = <y>;', '<y> = a;'], 'talk.y'],
    ['an imported rule', ['import <body.sites.site>;', '<x> = <site>;'], 'body.sites.site'],
    ['a rule of a whole imported grammar', ['import <body.sites.*>;', '<x> = <side>;'], 'body.sites.side'],
    [
      'an imported rule by its short qualified name',
      ['import <body.sites.*>;', '<x> = <sites.side>;'],
      'body.sites.side',
    ],
    ['a rule in full without an import', ['<x> = <body.sites.site>;'], 'body.sites.site'],
    [
      'its own rule before an imported one',
      ['import <body.sites.*>;', '<x> = <site>;', '<site> = a;'],
      'talk.site',
    ],
    ['its own rule in full', ['<x> = <talk.y>;', '<y> = a;'], 'talk.y'],
    [
      'a rule imported twice',
      ['import <body.sites.*>;', 'import <body.sites.site>;', '<x> = <site>;'],
      'body.sites.site',
    ],
  ];
  it.each(rows)('may mean %s', (_, lines, expected) => {
    const { rules } = linked(sites, source('talk', ...lines));
    expect(referenceOf(rules.get('talk.x')?.expansion)).toBe(expected);
  });

  const refused: readonly (readonly [string, readonly string[], number, RegExp])[] = [
    ['a rule that nobody has', ['<x> = <z>;'], 3, /defined nowhere/],
    ['a public rule that was not imported', ['<x> = <site>;'], 3, /add import <body\.sites\.site>;/],
    ['a short qualified name that was not imported', ['<x> = <sites.site>;'], 3, /defined nowhere/],
    ['a private rule of another grammar', ['<x> = <body.sites.word>;'], 3, /private/],
    [
      'a private rule behind an import of all',
      ['import <body.sites.*>;', '<x> = <word>;'],
      4,
      /defined nowhere/,
    ],
  ];
  it.each(refused)('must not mean %s', (_, lines, line, message) => {
    const [error, ...others] = errorsOf([sites, source('talk', ...lines)]);
    expect(others).toEqual([]);
    expect(error).toMatchObject({ file: 'talk.jsgf', line, rule: 'x' });
    expect(error?.message).toMatch(message);
  });

  it('is refused where two imports could be meant, and names both', () => {
    const other = source('other', 'public <site> = roof;');
    const talk = source(
      'talk',
      'import <body.sites.*>;',
      'import <other.*>;',
      '<x> = <site>;',
      '<y> = <other.site>;',
    );
    const found = errorsOf([sites, other, talk]);
    expect(found).toHaveLength(1);
    expect(found[0]?.message).toContain('<body.sites.site> or <other.site>');
  });

  it('is resolved wherever it stands in an expansion', () => {
    const { rules } = linked(
      sites,
      source('talk', 'import <body.sites.*>;', '<x> = a ([<side>] | /2/ <site>+ {t});'),
    );
    expect(JSON.stringify(rules.get('talk.x'))).toContain('"body.sites.side"');
    expect(JSON.stringify(rules.get('talk.x'))).toContain('"body.sites.site"');
  });
});

describe('a set', () => {
  it('names its rules in full and knows the public ones', () => {
    const set = linked(sites, source('talk', 'public <x> = a;'));
    expect([...set.rules.keys()]).toEqual([
      'body.sites.site',
      'body.sites.side',
      'body.sites.word',
      'talk.x',
    ]);
    expect(set.publicRules).toEqual(['body.sites.site', 'body.sites.side', 'talk.x']);
    expect(set.rules.get('talk.x')).toMatchObject({
      name: 'talk.x',
      isPublic: true,
      file: 'talk.jsgf',
      line: 3,
    });
  });

  it('lets grammars import each other while no rule needs itself', () => {
    const a = source('a', 'import <b.y>;', 'public <x> = one <y>;', 'public <z> = three;');
    const b = source('b', 'import <a.z>;', 'public <y> = two <z>;');
    expect(linked(a, b).rules.size).toBe(3);
  });

  it('refuses two grammars of one name', () => {
    const found = errorsOf([sites, { ...sites, file: 'copy.jsgf' }]);
    expect(found[0]).toMatchObject({ file: 'copy.jsgf', rule: null });
    expect(found[0]?.message).toContain('body.sites.jsgf');
  });

  it.each([
    ['import <nowhere.x>;', /no grammar is named nowhere/],
    ['import <nowhere.*>;', /no grammar is named nowhere/],
    ['import <body.sites.z>;', /has no <z>/],
    ['import <body.sites.word>;', /private/],
  ])('refuses %s', (line, message) => {
    const [error] = errorsOf([sites, source('talk', line)]);
    expect(error).toMatchObject({ file: 'talk.jsgf', line: 3, rule: null });
    expect(error?.message).toMatch(message);
  });

  it('gives the errors of every file that cannot be read', () => {
    const found = errorsOf([source('a', '<x> = ;'), sites, source('b', '<y> = (;')]);
    expect(found.map(({ file }) => file)).toEqual(['a.jsgf', 'b.jsgf']);
  });
});

describe('recursion', () => {
  it.each([
    ['a rule that holds itself', ['<x> = a [<x>];'], '<a.x> → <a.x>'],
    ['right recursion', ['<x> = a | a <x>;'], '<a.x> → <a.x>'],
    ['two rules that need each other', ['<x> = a <y>;', '<y> = b <x>;'], '<a.x> → <a.y> → <a.x>'],
    ['three', ['<x> = <y>;', '<y> = <z>;', '<z> = b <x>;'], '<a.x> → <a.y> → <a.z> → <a.x>'],
  ])('is refused for %s, with the way it goes', (_, lines, way) => {
    const found = errorsOf([source('a', ...lines)]);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ file: 'a.jsgf', line: 3, rule: 'x' });
    expect(found[0]?.message).toContain(way);
  });

  it('is refused across grammars that import each other', () => {
    const a = source('a', 'import <b.y>;', 'public <x> = one <y>;');
    const b = source('b', 'import <a.x>;', 'public <y> = two <x>;');
    expect(errorsOf([a, b])[0]?.message).toContain('<a.x> → <b.y> → <a.x>');
  });

  it('does not blame a rule that only leads to it, and names two cycles apart', () => {
    const found = errorsOf([source('a', '<w> = <x>;', '<x> = <x>;', '<y> = <z>;', '<z> = <y>;')]);
    expect(found.map(({ rule }) => rule)).toEqual(['x', 'y']);
  });

  it('is not seen in rules that share a rule, or use one twice', () => {
    expect(errorsOf([source('a', '<x> = <y> <z> <z>;', '<y> = <z>;', '<z> = c;')])).toEqual([]);
  });
});

describe('a tag', () => {
  const known = (tag: string) => (tag.startsWith('site:') ? null : 'no such meaning; write site:…');

  it('is refused with its line and rule where the check answers with a message', () => {
    const found = errorsOf([source('a', '<x> = b {site:arm} |', '  c {sight:arm};')], known);
    expect(found).toEqual([
      { file: 'a.jsgf', line: 4, rule: 'x', message: '{sight:arm}: no such meaning; write site:…' },
    ]);
  });

  it('passes where the check answers null, and unchecked where there is none', () => {
    expect(errorsOf([source('a', '<x> = b {site:arm};')], known)).toEqual([]);
    expect(errorsOf([source('a', '<x> = b {anything};')])).toEqual([]);
  });
});
