// A part found otherwise than the whole was denied, minutes apart, is told with the times of both. The talk is invented.

import { expect, test } from 'vitest';
import { reportsOf } from './from-talk.ts';

test('a whole denied, and later a part of it found, are told with their times', () => {
  const { soap, mist } = reportsOf('no tenderness of the abdomen', '[00:20:00] right lower quadrant tender');
  for (const report of [soap, mist]) {
    expect(report).toMatch(/No tenderness of the abdomen at \d\d:\d\d/);
    expect(report).toMatch(/Right lower quadrant of the abdomen: tenderness at \d\d:\d\d/);
  }
});

test('so are a part found, and later the whole denied', () => {
  const { soap } = reportsOf('left knee swollen', '[00:30:00] no swelling of the left leg');
  expect(soap).toMatch(/Left knee: swelling at \d\d:\d\d/);
  expect(soap).toMatch(/No swelling of the left leg at \d\d:\d\d/);
});

test.each([
  ['an exception said in the same minute', ['no tenderness of the abdomen', 'right lower quadrant tender']],
  ['the other side', ['no swelling of the right leg', '[00:30:00] left knee swollen']],
  ['another finding', ['no bruising of the abdomen', '[00:30:00] right lower quadrant tender']],
] as const)('%s needs no time', (_, lines) => {
  const { soap } = reportsOf(...lines);
  expect(soap).toMatch(/No (tenderness|swelling|contusion) of the [a-z ]+(?! at \d) \(/);
  expect(soap).not.toMatch(/(tenderness|swelling|contusion)[a-z ]* at \d/);
});
