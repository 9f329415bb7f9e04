// The acoustic models are whole: the project's own is, byte for byte, the published one that its README names.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadModule } from '../../src/speech/file/load-module.ts';
import { MODEL_FILES, modelsOf } from '../../src/speech/index.ts';

const FOLDER = new URL('../../src/speech/engine/wide-band/', import.meta.url);
const README = readFileSync(new URL('README.txt', FOLDER), 'utf8');
/** Of each file, as taken from Debian's package pocketsphinx-en-us 0.8+5prealpha+1-15. */
const SUMS = new Map(
  [...README.matchAll(/^([0-9a-f]{64}) {2}(\S+)$/gm)].map(([, sum = '', file = '']) => [file, sum]),
);

describe('the model for the whole band', () => {
  it.each(['mdef', 'means', 'variances', 'sendump', 'transition_matrices'])('has %s unchanged', (file) => {
    const bytes = readFileSync(new URL(file, FOLDER));
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(SUMS.get(file));
  });

  it('hears further than the telephone’s, with the same phones and features', async () => {
    const { models } = await loadModule();
    const [wide, narrow] = [models.wide, models.narrow].map(
      (model) => JSON.parse(Buffer.from(model['feat_params.json']).toString()) as Record<string, unknown>,
    );
    expect([wide?.upperf, narrow?.upperf]).toEqual([6800, 3700]);
    for (const key of ['lowerf', 'transform', 'feat', 'svspec']) expect(wide?.[key]).toBe(narrow?.[key]);
    expect(models.wide['noisedict.txt']).toBe(models.narrow['noisedict.txt']);
    expect(Buffer.from(models.wide.means).equals(models.narrow.means)).toBe(false);
  });

  it('is refused where a file is missing, with its name', () => {
    const content = new Map(MODEL_FILES.map(({ name }) => [name, new Uint8Array(1)]));
    content.delete('wide/means');
    expect(() => modelsOf(content)).toThrow('wide/means');
  });
});
