// Checks the grammar reader against the sample grammars of an independent open-source reader and against the JSGF Note.
//
// Sources beside the checks:
// - "pyjsgf": the test grammars of github drmfinlay/pyjsgf, commit fc4487ad, folder test/ (MIT), and what its
//   test_import_resolution.py expects of them (seen).
// - "Note": JSpeech Grammar Format, W3C Note, 5 June 2000. Its text could not be seen here: these rows are from memory.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  type GrammarSource,
  linkGrammars,
  phrasesOf,
  readGrammar,
  sampleRule,
} from '../../src/jsgf/index.ts';

const folder = fileURLToPath(new URL('../../../shared/data/jsgf/', import.meta.url));
const present = existsSync(folder);

const sample = (file: string): GrammarSource => ({ file, text: readFileSync(`${folder}${file}`, 'utf8') });
const note = (name: string, ...lines: readonly string[]): GrammarSource => ({
  file: name,
  text: ['#JSGF V1.0;', `grammar ${name};`, ...lines].join('\n'),
});

function linked(...sources: readonly GrammarSource[]) {
  const result = linkGrammars(sources);
  if (result.kind === 'errors') throw new Error(JSON.stringify(result.errors, null, 2));
  return result.grammars;
}

const messages = (...sources: readonly GrammarSource[]): readonly string[] => {
  const result = linkGrammars(sources);
  return result.kind === 'errors' ? result.errors.map(({ message }) => message) : [];
};

function phrases(sources: readonly GrammarSource[], rule: string): readonly string[] {
  const listed = phrasesOf(linked(...sources), rule);
  return listed.kind === 'phrases' ? listed.phrases.map(({ words }) => words.join(' ')) : [];
}

if (!present) {
  const title = 'NOT CHECKED: the pyjsgf test grammars are needed in ../shared/data/jsgf';
  console.info(title);
  it(title, () => expect(present).toBe(false));
} else {
  describe('the pyjsgf test grammars', () => {
    it('all read, and all link as one set', () => {
      const files = readdirSync(folder).filter((file) => file.endsWith('.jsgf'));
      expect(files).toHaveLength(8);
      expect(linked(...files.map(sample)).publicRules).toContain('grammars.numbers.1to39');
    });

    // pyjsgf test_resolve_wildcard: `grammars.test1.*` is Z and W, since X and Y are private.
    it('give an import of all only the public rules', () => {
      const uses = note('test', 'import <grammars.test1.*>;', 'public <a> = <Z> <W>;');
      expect(phrases([sample('test1.jsgf'), uses], 'test.a')).toEqual(['x w', 'y w']);
    });

    // pyjsgf test_resolve_non_existant_grammars, _non_existant_rule, _private_rules: each raises an import error.
    it.each(['grammars.test0.*', 'grammars.test0.X', 'grammars.test1.A', 'grammars.test1.X'])(
      'refuse the import of %s',
      (name) => {
        expect(messages(sample('test1.jsgf'), note('test', `import <${name}>;`))).toHaveLength(1);
      },
    );

    // pyjsgf test_resolve_imports_multiple_grammars.
    it('share an imported rule between grammars', () => {
      const sources = ['numbers.jsgf', 'test4.jsgf', 'test5.jsgf'].map(sample);
      const back = phrases(sources, 'grammars.test4.BackspaceRule');
      // one to thirty nine are 39 numbers, and the number is optional
      expect(back).toHaveLength(40);
      expect(back).toContain('backspace thirty nine');
      expect(phrases(sources, 'grammars.test5.DeleteRule')).toHaveLength(40);
    });

    // pyjsgf test_resolve_imports_cycles: "Grammars that import from one another are resolved correctly."
    it('may import from one another, for no rule of theirs needs itself', () => {
      const sources = ['cycle-test1.jsgf', 'cycle-test2.jsgf'].map(sample);
      const uses = note(
        'test',
        'import <grammars.cycle-test1.rule1>;',
        'import <grammars.cycle-test2.rule2>;',
        'public <a> = <rule1> | <rule2>;',
      );
      expect(phrases([...sources, uses], 'test.a')).toEqual(['test x', 'test y']);
    });

    // pyjsgf test_same_local_and_imported_rule_names.
    it('give way to a local rule of the same name', () => {
      const uses = note('test', 'import <grammars.test1.Z>;', 'public <Z> = z;', 'public <a> = <Z>;');
      expect(phrases([sample('test1.jsgf'), uses], 'test.a')).toEqual(['z']);
    });

    // pyjsgf test_ambiguous_imported_rules and test_ambiguous_qualified_names (grammars2.test6 as that test writes it).
    it('are refused where a simple or a short qualified name could mean two rules, and accepted in full', () => {
      const other = note('grammars2.test6', 'public <rule> = test grammars two;');
      const uses = (reference: string) =>
        note(
          'test',
          'import <grammars.test6.rule>;',
          'import <grammars2.test6.rule>;',
          `public <a> = ${reference};`,
        );
      const test6 = sample('test6.jsgf');
      expect(messages(test6, other, uses('<rule>'))).toHaveLength(1);
      expect(messages(test6, other, uses('<test6.rule>'))).toHaveLength(1);
      expect(phrases([test6, other, uses('<grammars.test6.rule>')], 'test.a')).toEqual(['test grammars one']);
      expect(phrases([test6, other, uses('<grammars2.test6.rule>')], 'test.a')).toEqual([
        'test grammars two',
      ]);
    });

    // pyjsgf test_fully_qualified_rule_reference.
    it('can be referred to in full without an import', () => {
      const uses = note('test', 'public <rule> = <grammars.test1.W>;');
      expect(phrases([sample('test1.jsgf'), uses], 'test.rule')).toEqual(['w']);
    });
  });
}

// Note, section 5.1 (a basic grammar) and 5.2 (one that imports another): from memory.
const politeness = note(
  'com.acme.politeness',
  '// Body',
  'public <startPolite> = (please | kindly | could you | oh mighty computer) *;',
  'public <endPolite> = [ please | thanks | thank you ];',
);
const commands = note(
  'com.acme.commands',
  'import <com.acme.politeness.startPolite>;',
  'import <com.acme.politeness.endPolite>;',
  '/**',
  '  * Basic command.',
  '  * @example please move the window',
  '  * @example open a file',
  '  */',
  'public <basicCmd> = <startPolite> <command> <endPolite>;',
  '<command> = <action> <object>;',
  '<action> = /10/ open |/2/ close |/1/ delete |/1/ move;',
  '<object> = [the | a] (window | file | menu);',
);

describe('the examples of the JSGF Note (from memory)', () => {
  it('let the commands be said that its documentation comment names', () => {
    const said = phrases([politeness, commands], 'com.acme.commands.basicCmd');
    // 5 beginnings (one silent) × 4 actions × 3 articles (one silent) × 3 objects × 4 endings (one silent)
    expect(said).toHaveLength(5 * 4 * 3 * 3 * 4);
    expect(said).toContain('please move the window');
    expect(said).toContain('open a file');
    expect(said).toContain('oh mighty computer close menu thank you');
  });

  it('make "open" ten times as likely as "move"', () => {
    const set = linked(politeness, commands);
    const times = 1400;
    const counts = new Map<string, number>();
    for (let i = 0; i < times; i++) {
      const word = sampleRule(set, 'com.acme.commands.action', () => (i + 0.5) / times).words[0] ?? '';
      counts.set(word, (counts.get(word) ?? 0) + 1);
    }
    expect(Object.fromEntries(counts)).toEqual({ open: 1000, close: 200, delete: 100, move: 100 });
  });

  it.each([
    ['section 4.4', '<a> = south | north | east | west;', 4],
    ['section 4.4', '<a> = red | (carmine | scarlet) | blue;', 4],
    ['section 4.5', '<a> = [please] do (this | that);', 4],
    ['section 4.3', '<a> = where is the (kettle | cup) (now | today);', 4],
    ['section 4.1', '<a> = "New York" | "the first";', 2],
    ['section 2.4', '<a> = yes <NULL> | no <VOID>;', 1],
  ])('of the kind in %s: "%s" lets %i things be said', (_, rule, count) => {
    expect(phrases([note('a', rule)], 'a.a')).toHaveLength(count);
  });

  it('give several ways of saying one thing one tag (section 4.6)', () => {
    const set = linked(
      note(
        'a',
        'public <country> = Australia {Oz} | (United States) {USA} | America {USA} | (U S of A) {USA};',
      ),
    );
    const listed = phrasesOf(set, 'a.country');
    expect(
      listed.kind === 'phrases' && listed.phrases.map(({ words, tags }) => [words.join(' '), ...tags]),
    ).toEqual([
      ['Australia', 'Oz'],
      ['United States', 'USA'],
      ['America', 'USA'],
      ['U S of A', 'USA'],
    ]);
  });

  it('bind a repeat and a tag closer than a sequence, and a sequence closer than a choice (section 4.7)', () => {
    const bound = readGrammar(note('a', '<a> = b c* {t} | d;'));
    const grouped = readGrammar(note('a', '<a> = ((b) (c)* {t}) | (d);'));
    expect(bound.kind).toBe('grammar');
    expect(bound).toEqual(grouped);
    expect(readGrammar(note('a', '<a> = (b c)* {t} | d;'))).not.toEqual(bound);
    expect(readGrammar(note('a', '<a> = b (c* {t} | d);'))).not.toEqual(bound);
  });

  it('tell rules apart by the case of their letters (section 2.2)', () => {
    expect(phrases([note('a', '<rule> = b;', '<Rule> = c;', '<a> = <rule> <Rule>;')], 'a.a')).toEqual([
      'b c',
    ]);
  });

  // The Note (section 4.8) allows a rule to end in itself; this project refuses it, as its grammars are compiled to
  // finite networks.
  it('that use right recursion are refused here, and told what to write', () => {
    const [message] = messages(
      note('a', '<command> = <action> | (<action> and <command>);', '<action> = stop;'),
    );
    expect(message).toContain('<a.command> → <a.command>');
    expect(message).toContain('* or +');
  });
});
