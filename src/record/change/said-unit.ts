// A number without a unit is meant in the unit of the one it corrects, which the words of that one tell.

import { inRecordUnit, type Unit } from '../../parse/units.ts';

const converted = (value: number, unit: Unit): number => inRecordUnit({ value, unit })?.value ?? Number.NaN;

/** Degrees Celsius; a number no living body has in Celsius, or one that corrects a Fahrenheit one, is Fahrenheit. */
export function celsius(value: number, words: string): number {
  const fahrenheit = value > 46 || /\b(fahrenheit|f)\b/i.test(words);
  return converted(value, fahrenheit ? 'fahrenheit' : 'celsius');
}

/** Milligrams per decilitre; a number that corrects one said in millimoles is in millimoles. */
export const mgPerDl = (value: number, words: string): number =>
  converted(value, /\bmm(ol|oles?)?\b|milli ?mol/i.test(words) ? 'mmolPerL' : 'mgPerDl');

/** Centimetres; a number that corrects one said in inches, millimetres or feet is in those. */
export function centimetres(value: number, words: string): number {
  if (/inch|\d ?["”]/i.test(words)) return converted(value, 'inch');
  if (/\d ?mm\b|millimet/i.test(words)) return converted(value, 'millimetre');
  return converted(value, /\b(foot|feet) (long|wide|across)\b/i.test(words) ? 'foot' : 'centimetre');
}

/** Kilograms; a number that corrects one said in pounds is in pounds. */
export const kilograms = (value: number, words: string): number =>
  converted(value, /\d ?lbs?\b|\bpounds?\b/i.test(words) ? 'pound' : 'kilogram');
