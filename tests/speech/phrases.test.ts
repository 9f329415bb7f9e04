// The words that a browser is told of: terms of the trade from the grammar, never words that were misheard or are common.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { likelyPhrases, phrasesIn, type RecognitionMaker } from '../../src/speech/browser/index.ts';

const ROOT = new URL('../../grammar/', import.meta.url);
const text = (file: string): string => readFileSync(new URL(file, ROOT), 'utf8');
const real = likelyPhrases(
  readdirSync(ROOT)
    .filter((file) => file.endsWith('.jsgf'))
    .map((file) => ({ file, text: text(file) })),
  text('pronunciations.dict'),
);
const grammar = (name: string, body: string) => [
  { file: `${name}.jsgf`, text: `#JSGF V1.0;\ngrammar ${name};\n${body}\n` },
];
const RARE =
  'crepitus K R EH P AH T AH S\nileum IH L IY AH M\nilium IH L IY AH M\nfibulas F IH B\nfibula F IH B\n';
const made = (name: string, body: string) =>
  likelyPhrases(grammar(name, body), RARE).map(({ phrase }) => phrase);

describe('likely phrases', () => {
  it.each(['crepitus', 'olecranon', 'sternum', 'ecchymosis', 'malleolus'])('hold %s', (word) => {
    expect(real.map(({ phrase }) => phrase)).toContain(word);
  });

  it.each(['left', 'no', 'knee', 'pain', 'hand', 'brews'])('do not hold %s', (word) => {
    expect(real.map(({ phrase }) => phrase)).not.toContain(word);
  });

  // Web Speech API, draft of the W3C Audio group: a boost outside 0 to 10 is a SyntaxError, and so is an empty phrase.
  it('are such as the draft allows, and each is there once', () => {
    expect(real.length).toBeGreaterThan(100);
    expect(real.length).toBeLessThan(400);
    for (const { phrase, boost } of real) {
      expect(phrase.trim()).not.toBe('');
      expect(boost).toBeGreaterThan(0);
      expect(boost).toBeLessThan(9);
    }
    expect(new Set(real.map(({ phrase }) => phrase)).size).toBe(real.length);
  });

  it('leave out what a recogniser writes by mistake, and what mostly means something else', () => {
    expect(made('findings', 'public <a> = ileum {homophone} | ilium | crepitus;')).toEqual([
      'ilium',
      'crepitus',
    ]);
    expect(made('sites', 'public <a> = /0.2/ ileum | ilium;')).toEqual(['ilium']);
  });

  it('hold of a word and its plural the word', () => {
    expect(made('sites', 'public <a> = fibula | fibulas;')).toEqual(['fibula']);
  });

  it('come from the body and its findings alone, and a faulty grammar gives none', () => {
    expect(made('talk', 'public <a> = crepitus;')).toEqual([]);
    expect(made('sites', 'public <a> = (crepitus;')).toEqual([]);
  });
});

describe('a browser', () => {
  class Plain {}
  class Biased {
    phrases: readonly object[] = [];
  }
  Object.defineProperty(Biased.prototype, 'phrases', { value: [], configurable: true });
  class SpeechRecognitionPhrase {}
  const maker = (one: unknown) => one as RecognitionMaker;

  it('is told of phrases only where it has both the list and the phrase', () => {
    expect(phrasesIn({ SpeechRecognitionPhrase }, maker(Biased))).toBe(SpeechRecognitionPhrase);
    expect(phrasesIn({ SpeechRecognitionPhrase }, maker(Plain))).toBeNull();
    expect(phrasesIn({}, maker(Biased))).toBeNull();
  });
});
