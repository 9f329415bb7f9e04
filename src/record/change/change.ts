// One change tried on one entry; which entries it is tried on is decided elsewhere.

import type { Change } from '../../parse/frame.ts';
import type { Entry } from '../entry.ts';
import { changeFinding, changePresent } from './answer.ts';
import { changeNumber } from './number.ts';
import type { Outcome } from './outcome.ts';
import { changeSide, changeSite } from './place.ts';

/** A change that keeps the entry's other slots: neither a strike nor a whole new statement. */
export type SlotChange = Exclude<Change, { change: 'strike' | 'statement' }>;

/** What the change makes of the entry; `words` are those its value came from, which tell the unit it was said in. */
export function applyChange(entry: Entry, change: SlotChange, words: string): Outcome {
  switch (change.change) {
    case 'side':
      return changeSide(entry, change.side);
    case 'site':
      return changeSite(entry, change);
    case 'present':
      return changePresent(entry, change.present);
    case 'finding':
      return changeFinding(entry, change.finding);
    case 'number':
      return changeNumber(entry, change.value, words);
  }
}
