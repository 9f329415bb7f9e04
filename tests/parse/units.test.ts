import { describe, expect, test } from 'vitest';
import { inRecordUnit, isUnit, RECORD_UNITS, roundTo, UNIT_TABLE, type Unit } from '../../src/parse/units.ts';

describe('an amount is kept in the unit of the record', () => {
  const rows: readonly (readonly [number, Unit, number, string])[] = [
    [3, 'centimetre', 3, 'cm'],
    [2, 'inch', 5.08, 'cm'],
    [0.5, 'inch', 1.27, 'cm'],
    [6, 'foot', 182.88, 'cm'],
    [4, 'millimetre', 0.4, 'cm'],
    [1.8, 'metre', 180, 'cm'],
    [98.6, 'fahrenheit', 37, 'celsius'],
    [101.5, 'fahrenheit', 38.6, 'celsius'],
    [32, 'fahrenheit', 0, 'celsius'],
    [31.97, 'fahrenheit', 0, 'celsius'],
    [36.6, 'celsius', 36.6, 'celsius'],
    [104, 'mgPerDl', 104, 'mgPerDl'],
    [5.8, 'mmolPerL', 104, 'mgPerDl'],
    [180, 'pound', 81.6, 'kg'],
    [12, 'stone', 76.2, 'kg'],
    [70, 'kilogram', 70, 'kg'],
    [10, 'month', 0.83, 'years'],
    [34, 'year', 34, 'years'],
    [2, 'minute', 120, 'seconds'],
  ];
  test.each(rows)('%d %s is %d %s', (value, unit, expected, recordUnit) => {
    const converted = inRecordUnit({ value, unit });
    expect(converted).toMatchObject({ value: expected, unit: recordUnit });
    expect(Object.is(converted?.value, -0)).toBe(false);
  });

  test('"five foot two" and "twelve stone four" are one amount', () => {
    expect(inRecordUnit({ value: 5, unit: 'foot' }, { value: 2, unit: 'inch' })?.value).toBe(157.48);
    expect(inRecordUnit({ value: 12, unit: 'stone' }, { value: 4, unit: 'pound' })?.value).toBe(78);
  });

  test('what cannot be summed gives null', () => {
    expect(inRecordUnit()).toBeNull();
    expect(inRecordUnit({ value: 5, unit: 'foot' }, { value: 2, unit: 'pound' })).toBeNull();
    expect(inRecordUnit({ value: 37, unit: 'celsius' }, { value: 2, unit: 'celsius' })).toBeNull();
  });

  test('every unit names its source and a measure that the record keeps', () => {
    for (const row of Object.values(UNIT_TABLE)) {
      expect(row.source).not.toBe('');
      expect(Object.keys(RECORD_UNITS)).toContain(row.measure);
    }
  });

  test('a unit is told from another word, an inherited name too', () => {
    expect(isUnit('inch')).toBe(true);
    expect(isUnit('toString')).toBe(false);
  });

  test('rounding leaves no dust', () => {
    expect(roundTo(0.1 + 0.2, 1)).toBe(0.3);
    expect(roundTo(5.08, 2)).toBe(5.08);
    expect(roundTo(1e-9, 2)).toBe(0);
  });
});
