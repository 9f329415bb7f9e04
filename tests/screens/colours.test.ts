// Every text colour of every look stands at 7:1 or more on its ground: WCAG 2.2, success criterion 1.4.6 (AAA).

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const CSS = readFileSync(new URL('../../src/screens/styles/colours.css', import.meta.url), 'utf8');

/** The colours that a block sets, by name. */
function colours(selector: string): Readonly<Record<string, string>> {
  const start = CSS.indexOf(`${selector} {`);
  const block = CSS.slice(start, CSS.indexOf('}', start));
  return Object.fromEntries(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', value = '']) => [name, value]),
  );
}

const LOOKS: Readonly<Record<string, string>> = {
  'plain, light': ':root',
  'plain, dark': ':root[data-look="plain"]',
  night: ':root[data-look="night"]',
  sun: ':root[data-look="sun"]',
};

const PAIRS: readonly (readonly [text: string, ground: string])[] = [
  ['ink', 'paper'],
  ['ink', 'ground'],
  ['soft-ink', 'paper'],
  ['on-fill', 'fill'],
  ['accent', 'paper'],
  ['ink', 'doubt'],
  ['alarm', 'paper'],
  ['on-doubt', 'doubt'],
  ['on-settled', 'settled'],
  ['left', 'paper'],
  ['right', 'paper'],
];

/** Relative luminance as WCAG 2.2 defines it. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe('contrast', () => {
  it('is worked out as the standard does: black on white is 21, and grey #767676 on white 4.54', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  describe.each(Object.entries(LOOKS))('by %s', (_name, selector) => {
    it.each(PAIRS)('of %s on %s is at least 7', (text, ground) => {
      const { [text]: front = '', [ground]: back = '' } = colours(selector);
      expect(front).toMatch(/^#/);
      expect(back).toMatch(/^#/);
      expect(contrast(front, back)).toBeGreaterThanOrEqual(7);
    });
  });
});
