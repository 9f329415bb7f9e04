// Signs out of the ordinary on the air, where they were told nowhere: pupils, temperature, glucose, skin; the talk is invented.

import { describe, expect, test } from 'vitest';
import { CLEAN_WORDS, SERIOUS_WORDS, wordBudget } from '../../src/handoff/index.ts';
import { reportsOf } from './from-talk.ts';

const saidOf = (...lines: readonly string[]): string => reportsOf(...lines).radio;

describe('a sign out of the ordinary is told on the air', () => {
  test.each([
    ['right pupil six millimetres not reacting, left pupil three reacting', /Pupils .*right NOT reactive/],
    ['pupils unequal', /Pupils NOT equal/],
    ['pupils pinpoint', /Pupils pinpoint/],
    ['right pupil sluggish', /right sluggish/],
    ['temperature thirty four point eight', /Temperature three four decimal eight/],
    ['temperature thirty eight point six', /Temperature three eight decimal six/],
    ['glucose two point six', /Glucose four seven milligrams/],
    ['glucose three hundred and ten', /Glucose three one zero milligrams/],
    ['skin mottled and cold', /Skin mottled/],
    ['skin pale and clammy', /Skin pale, clammy/],
  ])('%s', (line, words) => expect(saidOf(line, 'pulse ninety')).toMatch(words));
});

describe('an ordinary one is not', () => {
  test.each([
    ['pupils equal round and reactive, four millimetres', 'Pupils'],
    ['temperature thirty six point seven', 'Temperature'],
    ['glucose one hundred and four', 'Glucose'],
    ['skin pink, warm and dry', 'Skin'],
    ['skin pink and cold', 'Skin'],
  ])('%s', (line, name) => {
    const said = saidOf(line, 'pulse ninety');
    expect(said).not.toContain(name);
    expect(said).toContain('No present finding recorded.');
  });
});

test('beside it nothing is said to have been found without leaving the signs out', () => {
  for (const line of ['left pupil fixed', 'glucose two point six', 'sats eighty four on air', 'GCS nine']) {
    const said = saidOf(line);
    expect(said).not.toContain('No present finding');
    expect(said).toContain('No finding recorded besides the signs.');
  }
});

test('a word on one pupil says nothing of the other', () => {
  const said = saidOf('[00:01:00] left pupil fixed', '[00:04:00] right pupil reactive');
  expect(said).toContain('left NOT reactive');
});

test('two sizes that were said in two breaths are unequal pupils', () => {
  expect(saidOf('left pupil three millimetres', 'right pupil five millimetres')).toMatch(
    /Pupils left three millimetres, right five millimetres/,
  );
});

test('what is ordinary again is told with when it was not', () => {
  const said = saidOf('[00:01:00] glucose two point six', '[00:12:00] glucose six point two');
  expect(said).toMatch(/Glucose four seven .* at zero niner one one, last one one two milligrams/);
});

test('fixed pupils, a cold body and a low glucose make the report as long as a serious one may be', () => {
  expect(wordBudget(reportsOf('right pupil fixed').input)).toBe(SERIOUS_WORDS);
  expect(wordBudget(reportsOf('temperature thirty three').input)).toBe(SERIOUS_WORDS);
  expect(wordBudget(reportsOf('temperature thirty seven').input)).toBe(CLEAN_WORDS);
});

test('a fixed pupil goes before how it happened where the words are few', () => {
  const said = saidOf(
    ...['left shin bruised', 'right shin bruised', 'left elbow grazed', 'right elbow grazed'],
    'mechanism fell from a ladder onto gravel',
    'right pupil fixed and dilated',
  );
  expect(said).toContain('right NOT reactive');
});

test('what was said of the sign since is told behind what is out of the ordinary still', () => {
  const said = saidOf(
    '[00:01:00] right pupil six and not reacting, left three reacting',
    '[00:06:00] both pupils reacting now',
  );
  expect(said).toMatch(/right NOT reactive at zero niner one one, last reactive at zero niner one six/);
});
