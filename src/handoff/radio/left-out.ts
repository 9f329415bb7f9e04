// What was not examined, in the one phrase that a radio report has room for.

import type { HandoffInput } from '../input.ts';
import { and } from '../sentences/list.ts';
import { regionGaps } from '../sentences/unexamined.ts';
import { bare, type RadioLine } from './line.ts';
import { speak } from './speak.ts';

/** Regions that are named; more are counted, so that the phrase stays one. */
const NAMED = 5;

const nothingAt = ({ coverage }: HandoffInput): boolean =>
  coverage.every(({ state }) => state === 'not-examined');

const namedOr = (places: readonly string[], what: string): string =>
  places.length <= NAMED ? and(places) : `${places.length} ${what}`;

/** The phrase where something was left out, else null: a record that leaves nothing out needs no phrase. */
export function leftOut(input: HandoffInput): RadioLine | null {
  if (input.coverage.length === 0) return bare('What was not examined was not worked out');
  if (nothingAt(input)) return bare('Nothing examined head to toe');
  const { none, part } = regionGaps(input.coverage);
  if (none.length === 0 && part.length === 0) return null;
  const whole = none.length === 0 ? '' : `Not examined: ${and(none)}`;
  const half = part.length === 0 ? '' : `examined in part: ${namedOr(part, 'other regions')}`;
  const said = [whole, half].filter((words) => words !== '').join(', ');
  return bare(speak(said.charAt(0).toUpperCase() + said.slice(1)));
}
