// One thing to say on the air: its words without mark or full stop, the entries it tells, and how far they can be relied on.

import { type Told, withSlots } from '../sentences/told.ts';
import { idsOf, type Trust, trustIn } from '../sentences/trust.ts';
import type { Sentence } from '../text.ts';
import { speak } from './speak.ts';

export interface RadioLine {
  /** as it is spoken */
  readonly words: string;
  readonly entries: readonly string[];
  /** `marked` where the words themselves say what is unconfirmed */
  readonly trust: Trust | 'marked';
  /** lines that share a block are kept in one piece where they fit */
  readonly block?: string;
}

export const lineOf = (told: Told): RadioLine => ({
  words: speak(withSlots(told)),
  entries: idsOf(told.entries),
  trust: told.state === 'inside' ? 'marked' : trustIn(told.entries),
});

/** A line that rests on no entry. */
export const bare = (words: string): RadioLine => ({ words, entries: [], trust: 'confirmed' });

/** A sentence that is written with its marks already. */
export const asWritten = ({ text, entries }: Sentence): RadioLine => ({
  words: speak(text.replace(/\.$/, '')),
  entries,
  trust: 'marked',
});
