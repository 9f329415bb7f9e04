// Age and sex in one breath, and the ages of infants in months, weeks and days. All talk is invented.

import { describe, expect, test } from 'vitest';
import { standing } from '../standing.ts';

const told = (talk: string) =>
  standing(talk).flatMap((one) =>
    one.kind === 'history' ? [one.years === undefined ? one.text : one.years] : [one.kind],
  );

describe('age and sex, of infants too', () => {
  test.each([
    ['female, fifty one years old', [51, 'female']],
    ['man, nineteen years of age', [19, 'male']],
    ['elderly gentleman, eighty three years old', [83, 'male']],
    ['this lady is about seventy years old', [70, 'female']],
    ['three year old little girl', [3, 'female']],
    ['seven month old baby boy', [0.58, 'male']],
    ['a baby girl of five months', [0.42, 'female']],
    ['boy, eleven months old', [0.92, 'male']],
    ['nine week old baby girl', [0.1725, 'female']],
    ['four day old newborn', [0.011]],
    ['he is twelve days old', [0.0329]],
  ] as const)('%s', (talk, facts) => expect(told(talk)).toEqual(facts));
});

test.each(['the scar is three weeks old', 'that dressing is two days old', 'she is five months pregnant'])(
  '%s: is no age',
  (talk) => expect(standing(talk).filter((one) => one.kind === 'history' && one.topic === 'age')).toEqual([]),
);
