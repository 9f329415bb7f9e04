// An infant's age is told in the unit it was told in; ages are invented.

import { expect, test } from 'vitest';
import { ageText } from '../../src/timeline/index.ts';

test.each([
  [0.67, 'eight month old', '8 months'],
  [0.08, 'one month old', '1 month'],
  [1.5, 'eighteen months', '18 months'],
  [0.1725, 'nine week old baby', '9 weeks'],
  [0.0027, 'one day old', '1 day'],
  [0.0329, 'he is twelve days old', '12 days'],
  [1, 'one year old', '1 year'],
  [34, 'thirty four', '34 years'],
  // As told long after: nobody is 408 months old.
  [34, 'thirty four years and a month', '34 years'],
])('%s years, said as "%s": %s', (years, text, said) => expect(ageText({ years, text })).toBe(said));

test('an age in words is left to them', () => expect(ageText({ text: 'in her sixties' })).toBeNull());
