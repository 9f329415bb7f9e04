// A denial of which something is asked yet is told as such in every order. The talk is invented.

import { expect, test } from 'vitest';
import { imistAmbo, sbar, textOf } from '../../src/handoff/index.ts';
import { reportsOf } from './from-talk.ts';

const told = (...lines: readonly string[]) => {
  const { input, mist, soap } = reportsOf(...lines);
  return [soap, mist, textOf(sbar(input)), textOf(imistAmbo(input))];
};

test('a denial that may not be meant is marked, and what is asked of it is told', () => {
  for (const text of told('no wounds, graze on the back')) {
    expect(text).toMatch(/no (?:laceration or )?abrasion[^.]*still asked about/i);
    expect(text).toContain('Is this denied too, or is it there?');
  }
});

test('a plain denial bears no such mark, and nothing is to settle', () => {
  for (const text of told('no graze on the back')) {
    expect(text).toMatch(/no abrasion/i);
    expect(text).not.toContain('still asked about');
    expect(text).not.toContain('To settle');
  }
});
