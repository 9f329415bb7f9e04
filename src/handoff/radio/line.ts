// One thing to say on the air: its words without mark or full stop, the entries it tells, and how far they can be relied on.

import { leavesOf, type Told, withSlots } from '../sentences/told.ts';
import { idsOf, type Trust, trustIn } from '../sentences/trust.ts';
import type { Sentence } from '../text.ts';
import { speak } from './speak.ts';

export interface RadioLine {
  /** as it is spoken */
  readonly words: string;
  readonly entries: readonly string[];
  /** `marked` where the words themselves say what is unconfirmed */
  readonly trust: Trust | 'marked';
  /** the statements that it joins: a line that fits no piece is said one by one, so that no "no" is cut off its place */
  readonly parts?: readonly RadioLine[];
  /** lines that share a block are kept in one piece where they fit */
  readonly block?: string;
}

const single = (told: Told): RadioLine => ({
  words: speak(withSlots(told)),
  entries: idsOf(told.entries),
  trust: told.state === 'inside' ? 'marked' : trustIn(told.entries),
});

export function lineOf(told: Told): RadioLine {
  const line = single(told);
  if (told.clauses === undefined) return line;
  const [first, ...others] = leavesOf(told).map(single);
  if (first === undefined) return line;
  // A reading that said the same again has no statement of its own, and stays with the first.
  const said = new Set([first, ...others].flatMap(({ entries }) => entries));
  const rest = line.entries.filter((id) => !said.has(id));
  return { ...line, parts: [{ ...first, entries: [...first.entries, ...rest] }, ...others] };
}

/** A line that rests on no entry. */
export const bare = (words: string): RadioLine => ({ words, entries: [], trust: 'confirmed' });

/** A sentence that is written with its marks already. */
export const asWritten = ({ text, entries }: Sentence): RadioLine => ({
  words: speak(text.replace(/\.$/, '')),
  entries,
  trust: 'marked',
});

/** `work`, done once for each line and remembered for as long as the line is. */
export function perLine<T extends object | number>(work: (line: RadioLine) => T): (line: RadioLine) => T {
  const known = new WeakMap<RadioLine, T>();
  return (line) => {
    const before = known.get(line);
    if (before !== undefined) return before;
    const made = work(line);
    known.set(line, made);
    return made;
  };
}
