// Age and weight as numbers, where they are ones that a patient can have.

import { hasTag, type Island, numberOf, tagOf } from '../../islands/island.ts';
import type { Span } from '../../span.ts';
import { inRecordUnit, roundTo, UNIT_TABLE } from '../../units.ts';
import { type Talk, textOf } from '../talk.ts';
import type { FoundHistory, OpenTopic } from './found-history.ts';

// No living person is known to be older, heavier or lighter than about this (common practice, no source).
const MOST_YEARS = 120;
const WEIGHT_KG = { least: 0.3, most: 400 };

/** True for an age in years that a patient can have. */
export const isAge = (years: number): boolean => years >= 0 && years <= MOST_YEARS;

const SHORT_AGES = [
  { slot: 'months', unit: 'month' },
  { slot: 'weeks', unit: 'week' },
  { slot: 'days', unit: 'day' },
] as const;
/** Of weeks and days, since a day is 0.003 years; months keep the two places of an age in the record. */
const PLACES = 4;

const yearsOf = (value: number, unit: 'month' | 'week' | 'day'): number =>
  unit === 'month'
    ? (inRecordUnit({ value, unit })?.value ?? 0)
    : roundTo(value * UNIT_TABLE[unit].times, PLACES);

/** The age in years, months, weeks and days converted, and the sex where it is said with it. */
export function ageOf(talk: Talk, island: Island, { from, to }: Span): readonly FoundHistory[] | OpenTopic {
  const said = numberOf(island, 'years');
  const short = SHORT_AGES.flatMap(({ slot, unit }) => {
    const value = numberOf(island, slot);
    return value === null ? [] : [yearsOf(value, unit)];
  });
  // "Mid sixties" is an age in words, and no number of years.
  const inWords = hasTag(island, 'words');
  if (said === null && short.length === 0 && !inWords) return { topic: 'age', from, to };
  const years = said ?? short[0] ?? null;
  if (!inWords && (years === null || !isAge(years))) return [];
  const text = textOf(talk, from, to);
  const sex = tagOf(island, 'sex');
  return [
    {
      statement: { kind: 'history', topic: 'age', text, ...(years === null ? {} : { years }) },
      known: {},
      from,
      to,
    },
    ...(sex === null
      ? []
      : [{ statement: { kind: 'history', topic: 'sex', text: sex } as const, known: {}, from, to }]),
  ];
}

const MASS: Readonly<Record<string, 'kilogram' | 'pound' | 'stone'>> = {
  lb: 'pound',
  stone: 'stone',
  kg: 'kilogram',
};

/** The weight in kilograms, pounds and stones converted. */
export function weightOf(talk: Talk, island: Island, { from, to }: Span): readonly FoundHistory[] {
  const unit = MASS[tagOf(island, 'unit') ?? 'kg'] ?? 'kilogram';
  const kg = inRecordUnit({ value: numberOf(island, 'weight') ?? 0, unit })?.value ?? null;
  if (kg === null || kg < WEIGHT_KG.least || kg > WEIGHT_KG.most) return [];
  const text = textOf(talk, from, to);
  return [{ statement: { kind: 'history', topic: 'weight', text, kg }, known: {}, from, to }];
}
