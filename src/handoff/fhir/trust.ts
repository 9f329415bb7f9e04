// How far an entry can be relied on, said in the standard's own elements, in a tag and in words.

import { type Entry, stands } from '../../record/entry.ts';
import { capital } from '../sentences/list.ts';
import { ownCoding } from './concept.ts';
import type { Coding, Observation } from './shapes.ts';
import { plainWords } from './words.ts';

const isConfirmed = (entry: Entry): boolean => entry.state === 'confirmed';

/** `preliminary` until a person has confirmed that this is what was said. */
export const observationStatus = (entry: Entry): Observation['status'] =>
  isConfirmed(entry) ? 'final' : 'preliminary';

/** `final` where something stands and every bit of it is confirmed: of the whole, and of what was worked out from it. */
export function statusOfAll(entries: readonly Entry[]): Observation['status'] {
  const standing = entries.filter(stands);
  return standing.length > 0 && standing.every(isConfirmed) ? 'final' : 'preliminary';
}

/**
 * `unknown` until confirmed: for what is done the standard has no "preliminary", and a reader that looks at nothing but
 * the status must not take care as given because a machine heard so.
 */
export const whenConfirmed = <S extends string>(entry: Entry, status: S): S | 'unknown' =>
  isConfirmed(entry) ? status : 'unknown';

/** `confirmed` or `unconfirmed`, on every resource that came of an entry. */
export const trustTag = (entry: Entry): Coding =>
  ownCoding('trust', isConfirmed(entry) ? 'confirmed' : 'unconfirmed');

const SLOTS: Readonly<Record<string, string>> = { present: 'Yes or no' };

/** The words it came from; of an unconfirmed entry also what was not spoken, and what a person must settle. */
export function trustNotes(entry: Entry): readonly string[] {
  const heard = plainWords(entry.heard);
  const open = isConfirmed(entry)
    ? []
    : [
        'Unconfirmed.',
        ...Object.entries(entry.known ?? {}).map(
          ([slot, how]) => `${SLOTS[slot] ?? capital(slot)} ${how}, not spoken.`,
        ),
        ...(entry.doubt ?? []).map((doubt) => `To settle: ${doubt}`),
      ];
  return [...(heard === null ? [] : [`Heard: “${heard}”`]), ...open];
}
