// What the context keeps of care that was given: which, where, and the time that was said of it.

import type { CareStatement } from '../terms/index.ts';
import type { Cared } from './context.ts';

export const caredFor = ({ care, site, side, text }: CareStatement, at: number | null): Cared => ({
  care,
  site: site ?? null,
  side: side ?? null,
  text: text ?? null,
  at,
});

/** The list with more of it: what is told of the same place again takes the place of what was told before. */
export const withCared = (cared: readonly Cared[], more: readonly Cared[]): readonly Cared[] => [
  ...cared.filter((one) => !more.some((other) => isSameCare(one, other))),
  ...more,
];

/** True for the same care at the same place; each dose of a drug is one of its own. */
export const isSameCare = (one: Cared, other: Cared): boolean =>
  one.care === other.care && one.care !== 'medication' && one.site === other.site && one.side === other.side;
