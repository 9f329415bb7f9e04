// A time of care that is put right, in its breath or in the next one, is the later one. All invented.

import { describe, expect, it } from 'vitest';
import { stands } from '../../../src/record/entry.ts';
import { entriesOf, realReader } from '../../talk-case.ts';

const reader = realReader();

const careOf = (...talk: readonly string[]) =>
  entriesOf(reader, ['@start 2026-03-01T15:00:00+00:00', ...talk])
    .filter(stands)
    .flatMap((one) => (one.kind === 'care' ? [`${one.care} ${one.at.slice(11, 16)}`] : []));

describe('a time put right', () => {
  it.each([
    [
      'in its breath',
      ['pelvic binder on at fourteen twenty, no, fourteen twenty three'],
      'pelvic-binder 14:23',
    ],
    ['without a pause', ['splint on the left leg at fourteen ten make that fourteen twelve'], 'splint 14:12'],
    [
      'in the next breath',
      ['gave him aspirin at fourteen thirty', 'no, fourteen thirty five'],
      'medication 14:35',
    ],
    [
      'behind a "negative"',
      ['sling on the left arm at fourteen oh two', 'negative, fourteen oh four'],
      'sling 14:04',
    ],
  ])('%s', (_, talk, told) => {
    expect(careOf(...talk)).toEqual([told]);
  });

  it('is none behind what has no moment', () => {
    expect(careOf('left leg swollen', 'no, fourteen thirty five')).toEqual([]);
  });
});
