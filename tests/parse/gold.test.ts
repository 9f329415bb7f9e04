// The gold sets through the real grammar, parser and record; the shares below may rise and never fall. All is invented.

import { beforeAll, describe, expect, it } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import { UNREADABLE } from '../../src/record/index.ts';
import { casesOf, figuresOf, figuresText, runGold } from '../gold-run.ts';
import { realReader } from '../talk-case.ts';

/** The least share of cases that must pass. */
const LEAST: readonly (readonly [name: string, share: number])[] = [
  ['tuning', 0.98],
  ['tuning-more', 0.96],
  ['tuning-outside', 0.96],
  ['report', 0.92],
];

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

describe.each(LEAST)('the %s set', (name, share) => {
  const cases = casesOf(new URL(`../talk/${name}.jsonl`, import.meta.url));

  it(`passes in at least ${share * 100} of a hundred cases`, () => {
    const figures = figuresOf(runGold(reader, cases));
    console.info(figuresText(name, figures));
    expect(figures.cases).toBeGreaterThan(0);
    expect(figures.share).toBeGreaterThanOrEqual(share);
  });

  it('makes the reader fail on no line', () => {
    const failed = runGold(reader, cases).filter(({ entries }) =>
      entries.some((entry) => entry.doubt?.includes(UNREADABLE)),
    );
    expect(failed.map(({ gold }) => gold.id)).toEqual([]);
  });
});
