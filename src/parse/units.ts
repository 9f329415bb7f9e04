// The units a responder speaks in and what each is worth in the record's own unit, with the source of every factor.

export type Measure = 'length' | 'mass' | 'temperature' | 'glucose' | 'age' | 'time';

interface RecordUnit {
  readonly unit: string;
  /** decimal places that are kept: as fine as it is measured in the field, and no floating-point dust */
  readonly places: number;
}

export const RECORD_UNITS = {
  length: { unit: 'cm', places: 2 },
  mass: { unit: 'kg', places: 1 },
  temperature: { unit: 'celsius', places: 1 },
  glucose: { unit: 'mgPerDl', places: 0 },
  age: { unit: 'years', places: 2 },
  time: { unit: 'seconds', places: 1 },
} as const satisfies Record<Measure, RecordUnit>;

interface UnitRow {
  readonly measure: Measure;
  /** record value = (spoken value − `less`) × `times` */
  readonly times: number;
  readonly less: number;
  /** the unit's code in the Unified Code for Units of Measure */
  readonly ucum: string;
  readonly source: string;
}

const row = (measure: Measure, times: number, ucum: string, source: string, less = 0): UnitRow => ({
  measure,
  times,
  less,
  ucum,
  source,
});

const SI = 'SI prefix (BIPM SI Brochure, 9th ed. 2019, table 7; from memory)';
const NIST = 'NIST SP 811 (2008), appendix B.8; from memory';
const BIPM_TIME = 'BIPM SI Brochure, 9th ed. 2019, table 8; from memory';
const JULIAN = 'UCUM, table of other units: a year of 365.25 days, a month of one twelfth of it; from memory';

export const UNIT_TABLE = {
  millimetre: row('length', 0.1, 'mm', SI),
  centimetre: row('length', 1, 'cm', SI),
  metre: row('length', 100, 'm', SI),
  inch: row('length', 2.54, '[in_i]', NIST),
  foot: row('length', 30.48, '[ft_i]', NIST),
  gram: row('mass', 0.001, 'g', SI),
  kilogram: row('mass', 1, 'kg', SI),
  ounce: row('mass', 0.028349523125, '[oz_av]', NIST),
  pound: row('mass', 0.45359237, '[lb_av]', NIST),
  stone: row(
    'mass',
    6.35029318,
    '[stone_av]',
    '14 lb: Weights and Measures Act 1985 (UK), sch. 1; from memory',
  ),
  celsius: row('temperature', 1, 'Cel', SI),
  fahrenheit: row('temperature', 5 / 9, '[degF]', NIST, 32),
  mgPerDl: row('glucose', 1, 'mg/dL', SI),
  // 1 mmol/L is 180.16 mg/L
  mmolPerL: row(
    'glucose',
    18.016,
    'mmol/L',
    'molar mass of glucose 180.16 g/mol; PubChem CID 5793, from memory',
  ),
  year: row('age', 1, 'a', JULIAN),
  month: row('age', 1 / 12, 'mo', JULIAN),
  week: row('age', 7 / 365.25, 'wk', JULIAN),
  day: row('age', 1 / 365.25, 'd', JULIAN),
  second: row('time', 1, 's', SI),
  minute: row('time', 60, 'min', BIPM_TIME),
  hour: row('time', 3600, 'h', BIPM_TIME),
} as const satisfies Record<string, UnitRow>;

export type Unit = keyof typeof UNIT_TABLE;

export interface Amount {
  readonly value: number;
  readonly unit: Unit;
}

/** An amount in the unit the record keeps for its measure, rounded to that unit's places. */
export interface Converted {
  readonly measure: Measure;
  readonly value: number;
  readonly unit: (typeof RECORD_UNITS)[Measure]['unit'];
}

/** True for a word that is one of the units. */
export const isUnit = (word: string): word is Unit => Object.hasOwn(UNIT_TABLE, word);

/** The nearest value with so many decimal places; a half goes up, and there is no negative zero. */
export const roundTo = (value: number, places: number): number =>
  Math.round(value * 10 ** places) / 10 ** places + 0;

function exact(amount: Amount): number {
  const { times, less } = UNIT_TABLE[amount.unit];
  return (amount.value - less) * times;
}

/**
 * What was said as one amount ("five foot two", "twelve stone four"), summed and in the record's unit: cm, kg, °C to one
 * decimal, mg/dL (mmol/L × 18.016), years, seconds. Null where nothing was said, or the units do not measure the same.
 */
export function inRecordUnit(...amounts: readonly Amount[]): Converted | null {
  const [first] = amounts;
  if (first === undefined) return null;
  const { measure } = UNIT_TABLE[first.unit];
  if (amounts.some((amount) => UNIT_TABLE[amount.unit].measure !== measure)) return null;
  // "five celsius, two celsius" are two readings and not seven degrees
  if (measure === 'temperature' && amounts.length > 1) return null;
  const { unit, places } = RECORD_UNITS[measure];
  const sum = amounts.reduce((total, amount) => total + exact(amount), 0);
  return { measure, value: roundTo(sum, places), unit };
}
