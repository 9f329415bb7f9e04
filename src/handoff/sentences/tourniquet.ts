// Tourniquets with what was said of their being taken off, which a report tells beside their time.

import { type SaidOff, saidOffWords, type Tourniquet, tourniquetsOf } from '../../clinical/index.ts';
import { type Entry, standing } from '../../record/entry.ts';
import { clock, type Day, inOrder } from '../../timeline/index.ts';
import { tidy } from './list.ts';
import type { Told } from './told.ts';

/** Each tourniquet that stands, in the order they went on. */
export function tourniquetsIn(entries: readonly Entry[]): readonly Tourniquet[] {
  const ordered = inOrder(entries);
  return tourniquetsOf(standing(ordered, 'care'), standing(ordered, 'note'));
}

/** `said off at 09:15: “tourniquet off”`, beside the words of the tourniquet. */
export const saidOffTold = (said: SaidOff, day: Day): Told => ({
  words: tidy(saidOffWords(said, clock(said.note.at, day))),
  entries: [said.note],
});
