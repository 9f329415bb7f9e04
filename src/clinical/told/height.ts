// Heights and depths in told text, in feet; metres are converted.

import { NUMBER, numberIn } from './number.ts';

const FEET_PER_METRE = 1 / 0.3048;
const LENGTH = new RegExp(
  `(${NUMBER})(?:[\\s-]*(?:and )?(?:a )?half)?[\\s-]*(feet|foot|ft|met(?:re|er)s?|m)\\b`,
  'gi',
);

export interface Length {
  readonly feet: number;
  /** where its words begin and end in the text */
  readonly from: number;
  readonly to: number;
}

/** Every length named in feet or metres, in the order said. */
export const lengthsIn = (text: string): readonly Length[] =>
  [...text.matchAll(LENGTH)].flatMap((match): readonly Length[] => {
    const value = numberIn(match[1] ?? '');
    if (value === null) return [];
    const half = /half/i.test(match[0]) ? 0.5 : 0;
    const feet = /^m/i.test(match[2] ?? '') ? (value + half) * FEET_PER_METRE : value + half;
    return [{ feet, from: match.index, to: match.index + match[0].length }];
  });

const INCHES = new RegExp(`(${NUMBER})[\\s-]*(inch(?:es)?|cm|centimet(?:re|er)s?)\\b`, 'gi');

/** The greatest length named in inches or centimetres, in inches; null where none is named. */
export function inchesIn(text: string): number | null {
  let most: number | null = null;
  for (const match of text.matchAll(INCHES)) {
    const value = numberIn(match[1] ?? '');
    if (value !== null) most = Math.max(most ?? 0, /^c/i.test(match[2] ?? '') ? value / 2.54 : value);
  }
  return most;
}
