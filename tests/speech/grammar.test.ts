// The hearing grammar: small enough to search, of words that can be pronounced, and understood by the parser.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { linkGrammars, sampleRule } from '../../src/jsgf/index.ts';
import { hearingFiles } from '../../src/replay/hearing-setup.ts';
import { SAYINGS } from '../../src/screens/voice/words.ts';
import { PHONES, readPronunciations } from '../../src/speech/engine/pronunciations.ts';
import { hearingGrammar } from '../../src/speech/hearing/network-of-files.ts';
import { wordsOf } from '../../src/speech/network/network.ts';
import { FINDINGS, SITES } from '../../src/terms/index.ts';
import { entriesOf, realReader } from '../talk-case.ts';
import { says } from './says.ts';
import { EXAMINER } from './sentences.ts';

// Long enough for a slow machine with other work to do.
vi.setConfig({ testTimeout: 60_000 });

const files = hearingFiles();
const PACKAGE = dirname(createRequire(import.meta.url).resolve('soundswallower'));
const DICTIONARY = new Set(
  readFileSync(join(PACKAGE, 'model/en-us/dict.txt'), 'utf8')
    .split('\n')
    .map((line) => line.split(/\s/)[0] ?? ''),
);
const OWN = readPronunciations(files.pronunciations);

function network() {
  const made = hearingGrammar(files);
  if (made.kind === 'errors') throw new Error(made.errors.map(({ message }) => message).join('\n'));
  return made.network(() => true);
}
const NETWORK = network();

describe('the hearing grammar', () => {
  it('has no fault', () => {
    expect(hearingGrammar(files).kind).toBe('grammar');
  });

  it('lets all be said that the page offers to be asked by', () => {
    const offered = SAYINGS.flatMap(({ sayings }) => sayings).filter(({ command }) => command !== null);
    expect(offered.map(({ say }) => say).filter((words) => !says(NETWORK, words.toLowerCase()))).toEqual([]);
  });

  it('can be searched in time: some thousands of states and of silent steps, tens of thousands of words', () => {
    expect(NETWORK.states).toBeLessThan(5000);
    expect(NETWORK.silent.length).toBeLessThan(10_000);
    expect(NETWORK.arcs.length).toBeLessThan(40_000);
  });

  it('has a pronunciation for every word, in the dictionary or in grammar/pronunciations.dict', () => {
    expect(wordsOf(NETWORK).filter((word) => !DICTIONARY.has(word) && !OWN.has(word))).toEqual([]);
  });

  it.each(EXAMINER)('lets be said: %s', (sentence) => {
    expect(says(NETWORK, sentence)).toBe(true);
  });

  it.each([
    'it holds',
    'both hold',
    'open record seven',
    'next patient',
    'switch to patient two',
    'back to patient one',
    'top problem is the left wrist',
    'strike the problem left knee',
    'add a problem hypothermia',
    'add internal bleeding to the problem list',
  ])('lets the tool be told: %s', (sentence) => {
    expect(says(NETWORK, sentence)).toBe(true);
  });

  it.each([
    'the weather looks better this afternoon',
    'no',
    'now no swelling',
    'left elbow swelling denies',
    'pulse',
    'four arm tender',
  ])('tells: %s', (sentence) => {
    expect(says(NETWORK, sentence)).toBe(sentence === 'no');
  });

  /** Where the words said differ from the name in the record. */
  const SAID: Readonly<Record<string, string>> = {
    'behind-ear': 'behind the left ear',
    'jugular-distension': 'jugular venous distension',
    'limited-motion': 'limited range of motion',
  };
  const named = (name: string): string => SAID[name] ?? name.replaceAll('-', ' ');

  it.each(SITES)('lets the site be said: %s', (site) => {
    const ways = ['', 'left ', 'both '].map((side) => `${side}${named(site)} tender`);
    expect(ways.some((words) => says(NETWORK, words))).toBe(true);
  });

  it.each(FINDINGS)('lets the finding be said, and denied: %s', (finding) => {
    expect(says(NETWORK, `${named(finding)} of the neck`)).toBe(true);
    expect(says(NETWORK, `no ${named(finding)} of the neck`)).toBe(true);
  });

  it('lets every way through be taken with some chance, and no state be left with more than one', () => {
    const leaving = new Map<number, number>();
    for (const { from, chance } of [...NETWORK.arcs, ...NETWORK.silent]) {
      expect(chance).toBeGreaterThan(0);
      leaving.set(from, (leaving.get(from) ?? 0) + chance);
    }
    // A state with words and silent steps shares its chance between them but for the word it is entered for.
    for (const sum of leaving.values()) expect(sum).toBeLessThan(2.001);
  });

  it('is understood: what can be heard leaves something in the record', () => {
    const linked = linkGrammars(files.grammar);
    if (linked.kind === 'errors') throw new Error('the grammar has faults');
    let seed = 7;
    const random = () => {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      return seed / 2_147_483_648;
    };
    const reader = realReader();
    const unread: string[] = [];
    let asked = 0;
    for (const rule of ['vital', 'csm', 'care', 'seen-there', 'denied'])
      for (let count = 0; count < 120; count++) {
        const words = sampleRule(linked.grammars, `hearing.${rule}`, random).words.join(' ');
        if (!says(NETWORK, words)) continue;
        asked += 1;
        // A finding needs a site in mind, which leaves a visit of its own.
        const entries = entriesOf(reader, ['looking at the left hand', words]).slice(1);
        if (entries.every(({ kind }) => kind === 'note')) unread.push(`${rule}: ${words}`);
      }
    expect(asked).toBeGreaterThan(300);
    // Readings that cannot be (a pupil of zero millimetres) are notes by the contract, and the sampler makes many.
    expect(unread.length / asked, unread.join('\n')).toBeLessThan(0.05);
    // Minutes of talk are read; on a busy machine that takes a while.
  }, 60_000);
});

describe('the pronunciations', () => {
  const lines = files.pronunciations.split('\n').filter((line) => line !== '' && !line.startsWith(';;;'));

  it('are written in the phones of the model', () => {
    const wrong = [...OWN].filter(([, ways]) =>
      ways.some((phones) => phones.split(' ').some((phone) => !PHONES.includes(phone))),
    );
    expect(wrong).toEqual([]);
  });

  it('say each way once, and numbered from the first that the dictionary lacks', () => {
    expect(lines.filter((line, index) => lines.indexOf(line) !== index)).toEqual([]);
    const again = [...OWN.keys()].filter(
      (word) => DICTIONARY.has(word) && !lines.some((line) => line.startsWith(`${word}(`)),
    );
    expect(again).toEqual([]);
  });
});
