// Of two weights neither is settled, and what "no" was said with is not denied. The talk is invented.

import { expect, test } from 'vitest';
import { reportsOf } from './from-talk.ts';

test('two weights are told as unsettled, one and the same are not', () => {
  expect(reportsOf('weight sixty kilos', 'she weighs seventy kilos').soap).toMatch(
    /Weight: 60 kg; 70 kg; which holds is not settled/,
  );
  expect(reportsOf('weight sixty kilos').soap).not.toContain('not settled');
});

test('what is said behind a "no" in whole words is quoted and not denied', () => {
  const { soap } = reportsOf('does the pain go anywhere?', 'no, just stays in the middle');
  expect(soap).not.toContain('denies just');
  expect(soap).toMatch(/just stays in the middle/);
});
