// "I raised four sons", "two days in": whether a figure counts the thing behind it, and is no answer by itself.

import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { isSmall, type Piece, type Role } from './piece.ts';

const THINGS: ReadonlySet<Role> = new Set([
  'unknown',
  'site',
  'finding',
  'csm',
  'care',
  'history',
  'small',
  'mood',
]);
const MANY = /([^su]s|people|men|women|children|feet|teeth)$/;
const NO_THING = /^(yes|always|sometimes|his|its|is|was|has|does|this|yours|hers|besides|perhaps)$/;

/** True where the figure at `at` counts what stands straight behind it. */
export function countsThing(pieces: readonly Piece[], at: number, tokens: readonly Token[]): boolean {
  const [figure, next] = [pieces[at], pieces[at + 1]];
  if (figure === undefined || next === undefined || isPaused(tokens, figure)) return false;
  const { word = '' } = tokens[next.from] ?? {};
  // "Two minutes", "one hour".
  if (isSmall(next, 'unit')) return true;
  if (tokens[figure.from]?.word === 'one' && figure.to - figure.from === 1 && next.role === 'unknown')
    return true;
  return THINGS.has(next.role) && MANY.test(word) && !NO_THING.test(word);
}
