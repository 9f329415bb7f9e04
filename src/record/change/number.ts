// A bare number ("make that ninety four") takes the place of the entry's main number, in the unit that one was said in.

import type { Entry } from '../entry.ts';
import { statementOf } from '../statement-of.ts';
import { csmPlace, findingPlace, historyPlace } from './body-number.ts';
import { canBe } from './limits.ts';
import type { NumberPlace } from './number-place.ts';
import { type Outcome, SAME, SENSELESS } from './outcome.ts';
import { vitalPlace } from './vital-number.ts';

/**
 * The entry's statement with the number in place of its main one; refused where such a value cannot be.
 * `words` are those the earlier value came from: they tell its unit.
 */
export function changeNumber(entry: Entry, value: number, words: string): Outcome {
  const place = placeOf(entry, value, words);
  if (place === null) return SENSELESS;
  if (!canBe(place.limit, place.value) || (place.whole && !Number.isInteger(place.value))) {
    return { kind: 'impossible', why: `${value} cannot be that value, so the earlier one stands` };
  }
  const { statement, doubt } = place;
  if (JSON.stringify(statement) === JSON.stringify(statementOf(entry))) return SAME;
  const spoken = ['value', 'size', 'severity', 'count', 'years', 'kg', 'capRefillSeconds', 'strength'];
  return { kind: 'changed', statement, spoken, ...(doubt === undefined ? {} : { doubt: [doubt] }) };
}

function placeOf(entry: Entry, value: number, words: string): NumberPlace | null {
  switch (entry.kind) {
    case 'vital':
      return vitalPlace(entry, value, words);
    case 'finding':
      return findingPlace(entry, value, words);
    case 'csm':
      return csmPlace(entry, value);
    case 'history':
      return historyPlace(entry, value, words);
    default:
      return null;
  }
}
