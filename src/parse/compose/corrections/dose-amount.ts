// An amount of a drug in words, and a drug's words with another amount.

import { readNumbers } from '../../numbers/index.ts';

/** How a dose is counted, in one or more words. */
const UNIT =
  /^(?:micrograms?|mcg|mics|mikes|milligrams?|mg|m g|grams?|g|mils?|mls?|m l|millilitres?|milliliters?|litres?|liters?|units?|puffs?|sprays?|tablets?|pills?|drops?|percent)\b/;

export interface Amount {
  /** index past its last word */
  readonly end: number;
  /** how many words of it are the number */
  readonly number: number;
  /** empty where none was said */
  readonly unit: string;
}

/** The amount that begins at the first of the words; null where none does. */
export function amountIn(words: readonly string[]): Amount | null {
  const [number] = readNumbers(words, 0);
  if (number === undefined) return null;
  const unit = UNIT.exec(words.slice(number.end).join(' '))?.[0] ?? '';
  return { number: number.end, unit, end: number.end + (unit === '' ? 0 : unit.split(' ').length) };
}

/** True where the text tells an amount so counted. */
export const isCountedIn = (text: string, unit: string): boolean =>
  text.toLowerCase().split(/\s+/).map(stem).includes(stem(unit));

/** True where it tells an amount counted in something else: a thousand times as much hides in a unit. */
export const isCountedElse = (text: string, unit: string): boolean =>
  unit !== '' &&
  !isCountedIn(text, unit) &&
  text
    .toLowerCase()
    .split(/\s+/)
    .some((word) => UNIT.test(word));

const stem = (word: string): string => word.replace(/[.,;:]+$/, '').replace(/s$/, '');

/** The text with its one amount put right; with it behind its words where it tells none; null where it tells several. */
export function withAmount(text: string, number: string, unit: string): string | null {
  const words = text.split(/\s+/);
  const plain = words.map((word) => word.toLowerCase().replace(/[.,;:]+$/, ''));
  const found: { readonly at: number; readonly amount: Amount }[] = [];
  for (let at = 0; at < words.length; ) {
    const amount = amountIn(plain.slice(at));
    if (amount !== null) found.push({ at, amount });
    at += Math.max(1, amount?.end ?? 0);
  }
  const [one, ...others] = found;
  if (others.length > 0) return null;
  if (one === undefined) return unit === '' ? null : `${text}, ${number} ${unit}`;
  const { at, amount } = one;
  // Words that count nothing known, behind a number that is counted now: nobody can tell which of them go.
  if (unit !== '' && amount.unit === '' && at + amount.end < words.length && !isName(plain, at)) return null;
  const kept = unit === '' ? words.slice(at + amount.number, at + amount.end) : [unit];
  const anew = at === 0 ? number : number.charAt(0).toLowerCase() + number.slice(1);
  return [...words.slice(0, at), anew, ...kept, ...words.slice(at + amount.end)].join(' ');
}

/** "Ten of morphine": the number is counted in nothing, and what was given follows. */
const isName = (words: readonly string[], at: number): boolean => at === 0 && words.includes('of');
