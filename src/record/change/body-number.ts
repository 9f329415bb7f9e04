// The main number of a finding (size, severity, count), of a limb check and of age or weight, with another in its place.

import { NO_MOVEMENT, REFILL_LIMIT_SECONDS } from '../../terms/index.ts';
import type { Entry } from '../entry.ts';
import { statementOf } from '../statement-of.ts';
import type { NumberPlace } from './number-place.ts';
import { centimetres, kilograms } from './said-unit.ts';

type Of<K extends Entry['kind']> = Extract<Entry, { kind: K }>;

/** A size is meant before a severity, a severity before a count; more than one leaves a doubt. */
export function findingPlace(entry: Of<'finding'>, value: number, words: string): NumberPlace | null {
  const numbers = [
    entry.size?.value,
    typeof entry.severity === 'number' ? entry.severity : undefined,
    entry.count,
  ];
  const several = numbers.filter((number) => number !== undefined).length > 1;
  const doubt = several ? { doubt: 'more than one number was said before: which was meant?' } : {};
  const before = statementOf(entry);
  if (entry.size !== undefined) {
    const length = centimetres(value, words);
    const statement = { ...before, size: { value: length, unit: 'cm' as const } };
    return { limit: 'centimetres', value: length, whole: false, statement, ...doubt };
  }
  if (typeof entry.severity === 'number') {
    return { limit: 'score', value, whole: true, statement: { ...before, severity: value }, ...doubt };
  }
  if (entry.count === undefined) return null;
  return { limit: 'count', value, whole: true, statement: { ...before, count: value } };
}

/** Refill time, or strength as a grade. */
export function csmPlace(entry: Of<'csm'>, value: number): NumberPlace | null {
  const before = statementOf(entry);
  if (entry.capRefillSeconds !== undefined) {
    // Whether it is intact follows from the seconds.
    const present = value <= REFILL_LIMIT_SECONDS;
    const statement = { ...before, present, capRefillSeconds: value };
    return { limit: 'refillSeconds', value, whole: false, statement };
  }
  if (typeof entry.strength !== 'number') return null;
  const moves = entry.aspect === 'motion' ? { present: value > NO_MOVEMENT } : {};
  return { limit: 'strength', value, whole: true, statement: { ...before, ...moves, strength: value } };
}

/** Years of age, or weight. The text follows the number, since it is what a reader sees. */
export function historyPlace(entry: Of<'history'>, value: number, words: string): NumberPlace | null {
  const before = statementOf(entry);
  const text = String(value);
  if (entry.years !== undefined) {
    return { limit: 'years', value, whole: false, statement: { ...before, text, years: value } };
  }
  if (entry.kg === undefined) return null;
  const kg = kilograms(value, words);
  return { limit: 'kg', value: kg, whole: false, statement: { ...before, text: `${kg} kg`, kg } };
}
