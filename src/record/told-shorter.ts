// "Fell four metres from a roof. Correction, he fell at thirteen thirty": what happened is told anew in fewer words, for the sake of one of
// them, and how far somebody fell must not go with that.

import type { Statement } from '../terms/index.ts';
import { type Entry, firstTold } from './entry.ts';

/** Words that say nothing of what happened, and those of a clock. */
const SMALL = new Set(
  "he she they i it we you the a an was were is been had has did then that this actually just about around at on in from of to and by o'clock am pm past half quarter hours minutes ago this morning afternoon evening tonight yesterday today oh zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty hundred".split(
    ' ',
  ),
);

/** How much, how far, how fast. */
const MEASURE =
  /\b(\d+|metres?|meters?|feet|foot|inch(es)?|miles?|kilomet(re|er)s?|k p h|m p h|kph|mph|stor(ey|y|eys|ies)|floors?|steps|stairs|rungs|minutes?|seconds?|times)\b/i;

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}']+/u)
    .filter((word) => word !== '' && !SMALL.has(word));

/** What the shorter telling makes of the longer one: which statement stands, and what must be asked. */
export interface ToldShorter {
  readonly statement: Statement;
  readonly doubt: readonly string[];
}

/**
 * The statement as it was told before, where only its time is new; the new one with a question, where it lacks a measure that the
 * earlier one had; null where neither is so. `hasTime` is true where the correction speaks of a time.
 */
export function toldShorter(earlier: Entry, statement: Statement, hasTime: boolean): ToldShorter | null {
  if (earlier.kind !== 'history' || statement.kind !== 'history') return null;
  if (statement.topic !== 'mechanism' && statement.topic !== 'events') return null;
  if (earlier.topic !== statement.topic || (earlier.present ?? true) !== (statement.present ?? true))
    return null;
  const before = new Set(wordsOf(earlier.text));
  const now = wordsOf(statement.text);
  const isSpoken = Date.parse(earlier.at) !== Date.parse(firstTold(earlier));
  if (hasTime && !isSpoken && now.length > 0 && now.every((word) => before.has(word)))
    return { statement: { ...statement, text: earlier.text }, doubt: [] };
  if (!MEASURE.test(earlier.text) || MEASURE.test(statement.text)) return null;
  return { statement, doubt: [`“${earlier.text}” was told before: does the rest of it still stand?`] };
}
