// Says a number the way a responder may: in words, digit by digit where that is usual, or in figures.

import type { Chance } from '../../seeded.ts';

const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'zero ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** A whole number below a hundred. */
export function belowHundred(value: number): string {
  if (value < 20) return UNITS[value] ?? '';
  const rest = value % 10;
  return `${TENS[Math.floor(value / 10)]}${rest === 0 ? '' : ` ${UNITS[rest]}`}`;
}

/** A whole number below ten thousand in the short way that readings are said in: "one twenty", "one oh four", "two hundred". */
export function inShort(value: number): string {
  if (value < 100) return belowHundred(value);
  const [count, rest] = [belowHundred(Math.floor(value / 100)), value % 100];
  if (rest === 0) return `${count} hundred`;
  return rest < 10 ? `${count} oh ${UNITS[rest]}` : `${count} ${belowHundred(rest)}`;
}

function hundreds(value: number, chance: Chance): string {
  const rest = value % 100;
  const count = UNITS[Math.floor(value / 100)] ?? '';
  if (rest === 0) return `${count} hundred`;
  return chance.pick([
    inShort(value),
    `${count} hundred and ${belowHundred(rest)}`,
    `${count} hundred ${belowHundred(rest)}`,
  ]);
}

/** A number from 0 to 9999 with at most one decimal place. */
export function sayNumber(value: number, chance: Chance): string {
  if (chance.maybe(0.2)) return String(value);
  const whole = Math.floor(value);
  const tenth = Math.round((value - whole) * 10);
  const point = tenth === 0 ? '' : ` point ${UNITS[tenth]}`;
  if (whole < 100) return belowHundred(whole) + point;
  if (whole < 1000) return hundreds(whole, chance) + point;
  const rest = whole % 1000;
  const thousands = `${UNITS[Math.floor(whole / 1000)]} thousand`;
  if (rest === 0) return thousands;
  // After the thousands nobody says "one ninety" for a hundred and ninety.
  const over = rest < 100 ? '' : `${UNITS[Math.floor(rest / 100)]} hundred`;
  return [thousands, over, ...(rest % 100 === 0 ? [] : ['and', belowHundred(rest % 100)])]
    .filter((word) => word !== '')
    .join(' ');
}

/** A time on the clock of twenty-four hours, from ten o'clock on: "fourteen twenty two", "fourteen oh five", "14:05". */
export function sayClock(hour: number, minute: number, chance: Chance): string {
  if (chance.maybe(0.2)) return `${hour}:${String(minute).padStart(2, '0')}`;
  if (minute === 0) return `${belowHundred(hour)} hundred hours`;
  return `${belowHundred(hour)} ${minute < 10 ? 'oh ' : ''}${belowHundred(minute)}`;
}
