// Ordinary talk on a rescue that holds words of the trade and states nothing about the patient. All is invented.

import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import { stands } from '../../src/record/index.ts';
import { entriesOf, realReader } from '../talk-case.ts';

const ROWS = readFileSync(new URL('../talk/must-not-match.tsv', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .slice(1)
  .map((row) => row.split('\t') as [line: string, reason: string]);

const FORBIDDEN = new Set(['finding', 'csm', 'vital', 'care']);

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

describe('talk that states nothing about the patient', () => {
  it.each(ROWS)('gives no finding, limb check, vital or care: %s (%s)', (line) => {
    const wrong = entriesOf(reader, [line]).filter((entry) => stands(entry) && FORBIDDEN.has(entry.kind));
    expect(wrong).toEqual([]);
  });
});
