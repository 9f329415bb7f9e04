// Checks every unit's conversion against an independent implementation of the Unified Code for Units of Measure.
//
// Source: npm @lhncbc/ucum-lhc 7 (US National Library of Medicine), seen; its tables are those of UCUM.
// The molar mass of glucose, 180.16 g/mol, is handed to it; that figure is from memory (PubChem CID 5793).

import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { inRecordUnit, type Measure, RECORD_UNITS, UNIT_TABLE, type Unit } from '../../src/parse/units.ts';

interface Conversion {
  readonly status: string;
  readonly toVal: number | null;
  readonly msg: readonly string[];
}

const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  readonly UcumLhcUtils: {
    getInstance(): {
      convertUnitTo(
        from: string,
        value: number,
        to: string,
        options?: { readonly molecularWeight?: number },
      ): Conversion;
    };
  };
};
const ucum = UcumLhcUtils.getInstance();

const RECORD_UCUM = {
  length: 'cm',
  mass: 'kg',
  temperature: 'Cel',
  glucose: 'mg/dL',
  age: 'a',
  time: 's',
} as const satisfies Record<Measure, string>;

const GLUCOSE_GRAMS_PER_MOLE = 180.16;

const AMOUNTS = [0.25, 0.5, 1, 2, 3, 5.8, 7, 12, 36.6, 70, 98.6, 101.5, 104, 180];

describe('UCUM agrees with every conversion, to the places that the record keeps', () => {
  test.each(Object.keys(UNIT_TABLE) as Unit[])('%s', (unit) => {
    const { measure, ucum: code } = UNIT_TABLE[unit];
    for (const value of AMOUNTS) {
      const options = unit === 'mmolPerL' ? { molecularWeight: GLUCOSE_GRAMS_PER_MOLE } : {};
      const { status, toVal, msg } = ucum.convertUnitTo(code, value, RECORD_UCUM[measure], options);
      expect(status, msg.join(' ')).toBe('succeeded');
      const ours = inRecordUnit({ value, unit })?.value ?? Number.NaN;
      const half = 0.5 / 10 ** RECORD_UNITS[measure].places;
      expect(Math.abs(ours - (toVal ?? Number.NaN)), `${value} ${unit}`).toBeLessThanOrEqual(half + 1e-9);
    }
  });

  // The rounding above hides a small error in a factor, so the factors are compared as well.
  test.each(Object.keys(UNIT_TABLE) as Unit[])('%s: the factor itself', (unit) => {
    const { measure, ucum: code, times, less } = UNIT_TABLE[unit];
    const options = unit === 'mmolPerL' ? { molecularWeight: GLUCOSE_GRAMS_PER_MOLE } : {};
    const { toVal } = ucum.convertUnitTo(code, 1000, RECORD_UCUM[measure], options);
    expect((1000 - less) * times).toBeCloseTo(toVal ?? Number.NaN, 6);
  });
});
