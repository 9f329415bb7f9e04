// What is to be read again names the sign that was read longest ago. The talk is invented.

import { expect, test } from 'vitest';
import { reportsOf } from './from-talk.ts';

test('signs read at different times are not told as one set', () => {
  const { soap } = reportsOf('respirations eighteen', '[00:40:00] pulse ninety');
  expect(soap).toMatch(/Recheck vitals; last taken at 09:50, Respirations at 09:10\./i);
});

test('signs of one minute need one time', () => {
  const { soap } = reportsOf('respirations eighteen', 'pulse ninety');
  expect(soap).toContain('Recheck vitals; last taken at 09:10.');
});
