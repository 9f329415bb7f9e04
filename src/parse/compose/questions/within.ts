// Whether a place that an answer names is a part of what was asked after.

import { DIGITS, holdersOf, isWithin, type Site } from '../../../terms/index.ts';

/** True where one of these holds the site; "the thumb" is one of the fingers. */
export const isWithinAny = (site: Site, outer: readonly Site[]): boolean =>
  outer.some((one) => isWithin(site, one) || isOneDigit(site, one));

// "Any of your fingers?" "The thumb."
const isOneDigit = (site: Site, outer: Site): boolean =>
  (outer === 'fingers' || outer === 'toes') &&
  DIGITS.some((digit) => digit === site) &&
  holdersOf(site)[0] === holdersOf(outer)[0];
