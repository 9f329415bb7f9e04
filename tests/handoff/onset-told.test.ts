// When it began is told in every written order; how long a fit lasted is no time of the complaint. The talk is invented.

import { expect, test } from 'vitest';
import { imistAmbo, sbar, textOf } from '../../src/handoff/index.ts';
import { reportsOf } from './from-talk.ts';

const told = (...lines: readonly string[]) => {
  const { input, mist } = reportsOf(...lines);
  return { mist, sbar: textOf(sbar(input)), imist: textOf(imistAmbo(input)) };
};

const times = (text: string, words: string): number => text.split(words).length - 1;

test.each([
  [
    ['last known well at seven forty this morning', 'right arm weak'],
    'Onset: last known well at seven forty this morning, at 07:40',
  ],
  [['chest pain', 'it came on half an hour ago'], 'Onset: it came on half an hour ago, at 08:40'],
  [
    ['fell off a ladder at nine', 'the pain started ten minutes ago'],
    'Onset: the pain started ten minutes ago, at 09:00',
  ],
] as const)('the onset is told once with its time: %j', (lines, words) => {
  for (const text of Object.values(told(...lines))) expect(times(text, words)).toBe(1);
});

test('the length of an event is told as its own', () => {
  for (const text of Object.values(told('right arm weak', 'she had a fit, lasted three minutes'))) {
    expect(text).toContain('Time told of the event “she had a fit”: lasted three minutes');
    expect(text).not.toContain('Time told of the complaint');
  }
});

test('a time told of a complaint stays one', () => {
  for (const text of Object.values(told('belly pain', 'how long have you had it? two hours')))
    expect(text).toContain('Time told of the complaint: two hours');
});
