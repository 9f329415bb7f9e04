// Words that might as well have been others of their kind are unsure. Heard by the real recogniser; the kinds come from the
// project's hearing grammar.

import { describe, expect, it } from 'vitest';
import { hearingSetup } from '../../src/replay/hearing-setup.ts';
import type { HeardWord } from '../../src/speech/engine/decoder.ts';
import { loadModule } from '../../src/speech/file/load-module.ts';
import { hearingGrammar } from '../../src/speech/hearing/network-of-files.ts';
import { createSecondHearing } from '../../src/speech/hearing/second-hearing.ts';

const grammar = hearingGrammar(hearingSetup().files);
if (grammar.kind === 'errors') throw new Error('the hearing grammar has faults');
const NEAR = grammar.near(() => true);

describe('the words of a kind', () => {
  it.each([
    ['left', 'right'],
    ['ankle', 'elbow'],
    ['hip', 'head'],
    ['shin', 'chin'],
    ['eighteen', 'eighty'],
    ['two', 'ten'],
    ['stable', 'unstable'],
    ['is', "isn't"],
    ['no', 'now'],
  ])('%s may have been %s', (word, other) => {
    expect(NEAR.get(word)).toContain(word);
    expect(NEAR.get(word)).toContain(other);
  });

  it.each(['the', 'of', 'swollen', 'pulse', 'with'])('a mistake in "%s" is not looked for', (word) => {
    expect(NEAR.has(word)).toBe(false);
  });
});

/** Words that stand one after another in a sound of noise, which fits none of them. */
const heard = (...words: readonly string[]): readonly HeardWord[] =>
  words.map((word, index) => ({ word, start: index * 0.4, end: (index + 1) * 0.4, frames: 40, fit: -1000 }));

describe('a second hearing', () => {
  it('finds rivals of the words that matter where the sound is that of none, and of no others', async () => {
    const { module, models } = await loadModule();
    const { 'dict.txt': _, ...files } = models.wide;
    const ways: Readonly<Record<string, string>> = {
      left: 'L EH F T',
      right: 'R AY T',
      swollen: 'S W OW L AH N',
    };
    const near = new Map(['left', 'right'].map((word) => [word, ['left', 'right']] as const));
    const second = createSecondHearing(module, files, near, (word) => [ways[word] ?? '']);
    let seed = 1;
    const noise = Float32Array.from({ length: 16_000 }, () => {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) | 0;
      return (seed / 2 ** 31) * 0.1;
    });
    const rivals = ['left', 'right'].map((side) => second.rivals(heard(side, 'swollen'), noise));
    // Noise is neither: one of the two at least is no surer than the other.
    expect(rivals.some(([side]) => side === true)).toBe(true);
    for (const [, finding] of rivals) expect(finding).toBe(false);
    expect(second.rivals(heard('swollen'), noise)).toEqual([false]);
    expect(second.rivals([], noise)).toEqual([]);
    second.close();
  });
});
