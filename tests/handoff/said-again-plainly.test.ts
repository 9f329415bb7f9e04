// What is found again in plainer words, minutes later, still stands on the air. The talk is invented.

import { expect, test } from 'vitest';
import { reportsOf } from './from-talk.ts';

test.each([
  ['right thigh bleeding heavily', 'right thigh is bleeding again', /Right thigh: bleeding/],
  ['severe pain in the left hip', 'left hip still painful', /Left hip: [a-z ]*pain/],
])('"%s", then "%s"', (first, again, told) => {
  const { radio } = reportsOf(first, `[00:40:00] ${again}`);
  expect(radio).toMatch(told);
  expect(radio).not.toMatch(/: (Not examined|Examination|Nothing)/);
});
