// Holds sampling and listing to what the rules allow.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GrammarSet, linkGrammars, phrasesOf, sampleRule } from '../../src/jsgf/index.ts';

function setOf(...lines: string[]): GrammarSet {
  const result = linkGrammars([{ file: 'a.jsgf', text: ['#JSGF V1.0;', 'grammar a;', ...lines].join('\n') }]);
  if (result.kind === 'errors') throw new Error(result.errors.map(({ message }) => message).join('\n'));
  return result.grammars;
}

/** A random source that gives these numbers in turn, then begins again. */
function fixed(...numbers: readonly number[]): () => number {
  let at = 0;
  return () => numbers[at++ % numbers.length] ?? 0;
}

const say = (set: GrammarSet, ...numbers: readonly number[]) =>
  sampleRule(set, 'a.x', fixed(...numbers)).words.join(' ');

describe('a sample', () => {
  it('gives words and tags in the order written', () => {
    const set = setOf('<x> = the <site> {found} hurts;', '<site> = knee {site:knee};');
    expect(sampleRule(set, 'a.x', fixed(0))).toEqual({
      words: ['the', 'knee', 'hurts'],
      tags: ['site:knee', 'found'],
    });
  });

  it('chooses as the weights say', () => {
    const set = setOf('<x> = /1/ a | /0/ b | /3/ c;');
    expect([0, 0.24, 0.26, 0.99].map((n) => say(set, n))).toEqual(['a', 'a', 'c', 'c']);
  });

  it('says an optional part by chance, and a repeat a few times at most', () => {
    expect([0.1, 0.9].map((n) => say(setOf('<x> = a [b];'), n))).toEqual(['a b', 'a']);
    expect([0, 0.5, 0.99].map((n) => say(setOf('<x> = a*;'), n))).toEqual(['', 'a', 'a a']);
    expect([0, 0.99].map((n) => say(setOf('<x> = a+;'), n))).toEqual(['a', 'a a']);
  });

  it('goes round what cannot be spoken', () => {
    const set = setOf('<x> = a | b <y> | [c <VOID>] d (<y>)*;', '<y> = <VOID>;');
    expect([0, 0.49, 0.51, 0.99].map((n) => say(set, n))).toEqual(['a', 'a', 'd', 'd']);
  });

  it('throws for a rule that is not there or can never be spoken, for that is a bug of the caller', () => {
    expect(() => sampleRule(setOf('<x> = a;'), 'a.z', fixed(0))).toThrow('No rule is named <a.z>');
    expect(() => sampleRule(setOf('<x> = a <VOID>;'), 'a.x', fixed(0))).toThrow('never be spoken');
  });

  it('is always one of the phrases that the rule lists', () => {
    const set = setOf('<x> = [really] (no | not any {t}) <y>;', '<y> = pain | /4/ swelling [there];');
    const listed = phrasesOf(set, 'a.x');
    const phrases = listed.kind === 'phrases' ? listed.phrases.map(({ words }) => words.join(' ')) : [];
    expect(phrases).toHaveLength(12);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 1 }), (numbers) => {
        expect(phrases).toContain(say(set, ...numbers));
      }),
    );
  });
});

describe('a list of phrases', () => {
  const list = (line: string, limit?: number) => {
    const listed = phrasesOf(setOf(line), 'a.x', limit);
    return listed.kind === 'phrases' ? listed.phrases.map(({ words }) => words.join(' ')) : listed.kind;
  };

  it.each([
    ['<x> = a | b c;', ['a', 'b c']],
    ['<x> = [a] b;', ['b', 'a b']],
    ['<x> = (a | b) (c | d);', ['a c', 'a d', 'b c', 'b d']],
    ['<x> = a* b+;', ['b', 'a b']],
    ['<x> = a <NULL> | b <VOID>;', ['a']],
  ])('of %s is whole, with a repeat said once at most', (line, expected) => {
    expect(list(line)).toEqual(expected);
  });

  it('says so where there are too many', () => {
    expect(list('<x> = (a | b) (a | b) (a | b);', 7)).toBe('too-many');
    expect(list('<x> = (a | b) (a | b) (a | b);', 8)).toHaveLength(8);
  });
});
