// What was not examined, in the one phrase that a radio report has room for.

import type { HandoffInput } from '../input.ts';
import { and, capital } from '../sentences/list.ts';
import { regionGaps } from '../sentences/unexamined.ts';
import { bare, type RadioLine } from './line.ts';
import { speak } from './speak.ts';

/** Regions that are named; more are counted, so that the phrase stays one. */
const NAMED = 5;

const nothingAt = ({ coverage }: HandoffInput): boolean =>
  coverage.every(({ state }) => state === 'not-examined');

const namedOr = (places: readonly string[], what: string): string =>
  places.length <= NAMED ? and(places) : `${places.length} ${what}`;

/** Said where there is no room for the phrase. */
export const NOT_WHOLE = bare('Examination incomplete');

/** The phrase where something was left out, else null: a record that leaves nothing out needs no phrase. */
export function leftOut(input: HandoffInput): RadioLine | null {
  if (input.coverage.length === 0) return bare('What was not examined was not worked out');
  if (nothingAt(input)) return bare('Nothing examined head to toe');
  const { none, looked, part } = regionGaps(input.coverage);
  const said = [
    none.length === 0 ? '' : `not examined: ${and(none)}`,
    looked.length === 0 ? '' : `only looked at: ${and(looked)}`,
    part.length === 0 ? '' : `examined in part: ${namedOr(part, 'regions')}`,
  ].filter((words) => words !== '');
  return said.length === 0 ? null : bare(speak(capital(said.join(', '))));
}
