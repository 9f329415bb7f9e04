// How far apart two pupils are; the limit of 1 mm is read in the sources beside it. Sizes are invented.

import { expect, test } from 'vitest';
import { pupilParts } from '../../src/clinical/vitals/pupil-parts.ts';

test.each([
  [3, 3, null],
  [3, 3.5, null],
  [3, 4, 'mild'],
  [5, 3, 'grave'],
] as const)('%s and %s mm: %s', (leftMm, rightMm, abnormality) =>
  expect(pupilParts({ leftMm, rightMm })).toContainEqual({ part: 'size', abnormality }),
);

test('that they are unequal may be said in words', () =>
  expect(pupilParts({ equal: false, leftMm: 3, rightMm: 4 })).toContainEqual({
    part: 'size',
    abnormality: 'grave',
  }));
