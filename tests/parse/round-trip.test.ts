// What the grammar lets be heard is understood: sentences sampled from it give the frames that their tags fix.

import { beforeAll, describe, expect, it, vi } from 'vitest';
import { type Expansion, type GrammarSet, phrasesOf } from '../../src/jsgf/index.ts';
import { lateContraction } from '../../src/parse/contraction.ts';
import type { Reader } from '../../src/parse/index.ts';
import { SLOTS } from '../../src/parse/islands/fill.ts';
import { rootRules } from '../../src/parse/islands/roots.ts';
import { tokenise } from '../../src/parse/token.ts';
import { seeded } from '../seeded.ts';
import { realReader } from '../talk-case.ts';
import { asideSentences } from './round-trip/asides.ts';
import { careSentences } from './round-trip/care.ts';
import { csmSentences } from './round-trip/csm.ts';
import { findingSentences } from './round-trip/findings.ts';
import { historySentences } from './round-trip/history.ts';
import { type Sampler, sampler } from './round-trip/sampler.ts';
import { explain, misread, type Sentence } from './round-trip/sentence.ts';
import { turnSentences } from './round-trip/turns.ts';
import { vitalSentences } from './round-trip/vitals.ts';

// Long enough for a slow machine with other work to do.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const SEED = 20260503;
const LEAST_SENTENCES = 2000;

const sampling: Sampler = sampler(seeded(SEED));
const FAMILIES: readonly (readonly [name: string, sentences: readonly Sentence[]])[] = [
  ['findings at sites', findingSentences(sampling)],
  ['vital signs', vitalSentences(sampling)],
  ['circulation, sensation and motion', csmSentences(sampling)],
  ['history', historySentences(sampling)],
  ['care', careSentences(sampling)],
  ['negations, sides and corrections', turnSentences(sampling)],
  ['asides', asideSentences(sampling)],
];

function tokensIn(expansion: Expansion): readonly string[] {
  if (expansion.type === 'token') return [expansion.text];
  if (expansion.type === 'sequence') return expansion.items.flatMap(tokensIn);
  if (expansion.type === 'alternatives') return expansion.choices.flatMap(({ item }) => tokensIn(item));
  return expansion.type === 'optional' || expansion.type === 'repeat' ? tokensIn(expansion.item) : [];
}

const phrasesIn = (set: GrammarSet, rule: string): readonly string[] => {
  const listed = phrasesOf(set, rule);
  return listed.kind === 'phrases' ? listed.phrases.map(({ words }) => words.join(' ')) : [];
};

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

// Phrases of two words and more that begin or end with a filler's word.
const KEPT_INSIDE: ReadonlySet<string> = new Set([
  'uh in talk.answer',
  'hmm in talk.answer',
  'um in sites.sternum',
]);

describe('sentences sampled from the grammar', () => {
  it.each(FAMILIES)('about %s give their frames', (name, sentences) => {
    const wrong = sentences.flatMap((sentence) => misread(reader, sentence) ?? []);
    if (wrong.length > 0)
      console.info(
        `${name}: ${wrong.length} of ${sentences.length} misread\n${wrong.map(explain).join('\n')}`,
      );
    expect(wrong.map(({ sentence }) => sentence.lines.join(' / '))).toEqual([]);
  });

  it(`are at least ${LEAST_SENTENCES}`, () => {
    const count = FAMILIES.reduce((sum, [, sentences]) => sum + sentences.length, 0);
    console.info(`${count} sentences with seed ${SEED}`);
    expect(count).toBeGreaterThanOrEqual(LEAST_SENTENCES);
  });

  it('come from every rule that stands for itself', () => {
    const said = sampling.coverage()[0]?.rules ?? new Set<string>();
    expect(rootRules(sampling.set, SLOTS).filter((rule) => !said.has(rule))).toEqual([]);
  });

  // "Cannot" reaches the grammar as "can not", and "um" not at all: a phrase with such a word is never matched.
  it('hold only words that talk can give', () => {
    const fillers = new Set(phrasesIn(sampling.set, 'talk.filler'));
    const dead = [...sampling.set.rules.values()]
      .filter(({ name }) => name !== 'talk.filler')
      .flatMap(({ name, expansion }) => tokensIn(expansion).map((text) => ({ name, text })))
      .filter(({ text }) => /^[a-z]/.test(text))
      .filter(
        // A contraction is read in full in the grammar as in talk, and a filler stays inside a phrase ("uh huh").
        ({ name, text }) =>
          (fillers.has(text) && !KEPT_INSIDE.has(`${text} in ${name}`)) ||
          tokenise(text)
            .map(({ word }) => word)
            .join(' ') !== (lateContraction(text)?.join(' ') ?? text),
      );
    expect([...new Set(dead.map(({ name, text }) => `${text} in <${name}>`))]).toEqual([]);
  });

  it.each(['findings', 'vitals', 'csm', 'care'])(
    'say at least 80 in 100 of the alternatives in %s.jsgf',
    (name) => {
      const coverage = sampling.coverage().find(({ file }) => file === `grammar/${name}.jsgf`);
      console.info(`${name}.jsgf: ${coverage?.said} of ${coverage?.alternatives} alternatives said`);
      expect((coverage?.said ?? 0) / (coverage?.alternatives ?? 1)).toBeGreaterThanOrEqual(0.8);
    },
  );
});
