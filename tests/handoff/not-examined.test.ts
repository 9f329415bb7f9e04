// What was not examined is told as such in every report, also beside a wider place of which something was said; the talk is invented.

import { describe, expect, test } from 'vitest';
import { coverageSentences } from '../../src/handoff/fhir/coverage.ts';
import { reportsOf } from './from-talk.ts';

describe('where only the back was spoken of', () => {
  const { input, soap, radio } = reportsOf('no burns on the back');
  test('the neck and its spine are not examined in any report', () => {
    expect(soap).toMatch(/Not examined: head, neck, /);
    expect(soap).not.toContain('cervical spine');
    expect(radio).toMatch(/Not examined: head, neck, /);
    expect(radio).not.toContain('only looked at');
    expect(coverageSentences(input.coverage).join(' ')).not.toContain('cervical spine');
  });
});

test('a stable pelvis leaves groin, genitals and buttocks among what was not examined', () => {
  const { soap, radio } = reportsOf('pelvis stable');
  expect(soap).toMatch(/Not examined: .*both groins, genitals, both buttocks/);
  expect(radio).toContain('examined in part: pelvis');
});

test('a pelvis or chest that was only looked at is named with what that leaves hidden', () => {
  const { soap } = reportsOf('looking at the pelvis now', 'looking at the chest now');
  expect(soap).toContain('chest except both armpits');
  expect(soap).toContain('pelvis except both groins, genitals and both buttocks');
});
