// What is not confirmed is marked in the sentence itself, with a side or a yes-or-no that nobody spoke.

import type { Entry } from '../../record/entry.ts';

/** The word that marks whatever the partner has not confirmed. */
export const UNCONFIRMED = 'unconfirmed';

/** `side carried`: side and yes-or-no that were not spoken, of an entry that nobody has confirmed. */
const unspoken = (entry: Entry): readonly string[] =>
  entry.state !== 'heard'
    ? []
    : [
        ...(entry.known?.side === undefined ? [] : [`side ${entry.known.side}`]),
        ...(entry.known?.present === undefined ? [] : [`yes or no ${entry.known.present}`]),
      ];

/** The mark of one entry, such as `unconfirmed; side carried`; empty where it is confirmed. */
export const trustOf = (entry: Entry): string =>
  entry.state === 'heard' ? [UNCONFIRMED, ...unspoken(entry)].join('; ') : '';

/** The mark of a sentence that rests on these entries, with a space before it; empty where all are confirmed. */
export function markOf(entries: readonly Entry[]): string {
  const marks = [...new Set(entries.map(trustOf))];
  if (marks.length === 1) return marks[0] === '' || marks[0] === undefined ? '' : ` (${marks[0]})`;
  if (marks.length === 0) return '';
  return entries.every((entry) => entry.state === 'heard')
    ? ` (${UNCONFIRMED})`
    : ` (${UNCONFIRMED} in part)`;
}

/** True where there are standing entries and not one of them is confirmed. */
export const noneConfirmed = (entries: readonly Entry[]): boolean => {
  const standing = entries.filter(({ state }) => state === 'heard' || state === 'confirmed');
  return standing.length > 0 && standing.every(({ state }) => state === 'heard');
};

/** The ids of entries, in order. */
export const idsOf = (entries: readonly Entry[]): readonly string[] => entries.map(({ id }) => id);
