// An age as people say it: of an infant in the months, weeks or days that were told, since "0.67 years" is nobody's age.

import type { HistoryStatement } from '../terms/index.ts';

/** How many there are in a year of 365.25 days. */
const IN_A_YEAR = { month: 12, week: 365.25 / 7, day: 365.25 } as const;
const IS_IN = /\b(month|week|day)s?\b/i;
/** Years from which on nothing but years is told. */
const IN_YEARS = 2;

const IS_GUESS =
  /\b(about|around|roughly|approximately|approx|maybe|probably|looks?|seems?|appears?|estimated)\b/i;

/** `34 years`, `about 40 years`, `1 year`, `8 months`, `6 weeks`; null where no age in years was told. */
export function ageText({ years, text }: Pick<HistoryStatement, 'years' | 'text'>): string | null {
  if (years === undefined) return null;
  const unit = years < IN_YEARS ? IS_IN.exec(text)?.[1]?.toLowerCase() : undefined;
  const isOther = unit === 'month' || unit === 'week' || unit === 'day';
  const count = isOther ? Math.round(years * IN_A_YEAR[unit]) : years;
  const guess = IS_GUESS.test(text) ? 'about ' : '';
  return `${guess}${count} ${isOther ? unit : 'year'}${count === 1 ? '' : 's'}`;
}
