// A "no" that opens a breath and pauses may deny what follows it, or put right what was said: it is asked. All invented.

import { expect, it } from 'vitest';
import { standing } from '../standing.ts';

const asked = (talk: string) =>
  standing(talk).flatMap((one) =>
    one.kind === 'finding' && (one.doubt ?? []).some((doubt) => doubt.includes('put right'))
      ? [one.finding]
      : [],
  );

it.each([
  ['swelling of the left shin | no, tenderness', ['tenderness']],
  ['chest pain | no, belly pain', ['pain']],
])('%s: is asked', (talk, findings) => {
  expect(asked(talk)).toEqual(findings);
});

it.each([
  'left knee, no swelling',
  'left knee no swelling or tenderness',
  'is your neck sore | no',
  'any swelling there | no, none',
])('%s: is not', (talk) => {
  expect(asked(talk)).toEqual([]);
});
