// The build's own check of what the first load weighs: it follows imports, and refuses what is too much.

import { randomBytes } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { firstLoad, tooMuch } from '../../build/first-load.ts';

/** Code that does not get smaller by compression, of about so many bytes. */
const code = (bytes: number): string => randomBytes(bytes).toString('latin1');
const chunk = (bytes: number, imports: readonly string[] = [], facadeModuleId: string | null = null) =>
  ({ type: 'chunk', facadeModuleId, code: code(bytes), imports }) as const;

const BUNDLE = {
  'entry.js': chunk(1000, ['shared.js'], '/somewhere/index.html'),
  'shared.js': chunk(2000, ['deep.js', 'entry.js']),
  'deep.js': chunk(3000),
  'later.js': chunk(50_000),
  'other-page.js': chunk(50_000, ['shared.js'], '/somewhere/other.html'),
  'page.css': { type: 'asset' },
} as const;

describe('the first load', () => {
  it('is the entry and all that it imports, and nothing that is fetched later', () => {
    expect([...firstLoad(BUNDLE).keys()].toSorted()).toEqual(['deep.js', 'entry.js', 'shared.js']);
  });

  it('is refused where it weighs too much, with what weighs', () => {
    const sizes = firstLoad(BUNDLE);
    expect(tooMuch(sizes)).toBeNull();
    expect(tooMuch(sizes, 5000)).toMatch(/first load is .* kB, more than 5 kB: .*deep\.js \d/);
  });

  it('of 90 kB is the most that the build lets through', () => {
    expect(tooMuch(new Map([['entry.js', 90_000]]))).toBeNull();
    expect(tooMuch(new Map([['entry.js', 90_001]]))).not.toBeNull();
  });
});
