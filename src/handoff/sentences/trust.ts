// What is not confirmed is marked in the sentence itself, with a side or a yes-or-no that nobody spoke.

import type { Entry } from '../../record/entry.ts';

/** The word that marks whatever the partner has not confirmed. */
export const UNCONFIRMED = 'unconfirmed';

/** How far a sentence can be relied on: all its entries are confirmed, none is, or some are. */
export type Trust = 'confirmed' | 'unconfirmed' | 'in part';

/** A denial of which something is asked yet: told bare it would be taken for settled. */
const isAskedDenial = (entry: Entry): boolean =>
  (entry.kind === 'finding' || entry.kind === 'history') &&
  entry.present === false &&
  (entry.doubt ?? []).length > 0;

/**
 * `side carried`, `yes or no inferred`: side and yes-or-no that were carried or worked out, of an entry that nobody has
 * confirmed; and `still asked about` for a denial in doubt.
 */
export const unspokenOf = (entry: Entry): readonly string[] =>
  entry.state !== 'heard'
    ? []
    : [
        ...(entry.known?.side === undefined ? [] : [`side ${entry.known.side}`]),
        ...(entry.known?.present === undefined ? [] : [`yes or no ${entry.known.present}`]),
        ...(isAskedDenial(entry) ? ['still asked about'] : []),
      ];

/** `side` of `side carried` */
const slotOf = (mark: string): string => mark.replace(/ \w+$/, '');

/** Slots that nobody spoke in any of several statements of one fact: said with its side once, its side was spoken. */
export function unspokenOfFact(entries: readonly Entry[]): readonly string[] {
  const [first, ...others] = entries.map(unspokenOf);
  return (first ?? []).filter((mark) =>
    others.every((marks) => marks.some((one) => slotOf(one) === slotOf(mark))),
  );
}

/** Each slot that was not spoken of any of the entries, once. */
export const unspokenIn = (entries: readonly Entry[]): readonly string[] => [
  ...new Set(entries.flatMap(unspokenOf)),
];

/** The mark of one entry, such as `unconfirmed; side carried`; empty where it is confirmed. */
export const trustOf = (entry: Entry): string =>
  entry.state === 'heard' ? [UNCONFIRMED, ...unspokenOf(entry)].join('; ') : '';

/** How far a sentence on these entries can be relied on; one that rests on none claims nothing of the patient. */
export function trustIn(entries: readonly Entry[]): Trust {
  const heard = entries.filter(({ state }) => state === 'heard').length;
  if (heard === 0) return 'confirmed';
  return heard === entries.length ? 'unconfirmed' : 'in part';
}

/** The mark of a sentence that rests on these entries, with a space before it; empty where all are confirmed. */
export function markOf(entries: readonly Entry[]): string {
  const trust = trustIn(entries);
  if (trust === 'confirmed') return '';
  const state = trust === 'unconfirmed' ? UNCONFIRMED : `${UNCONFIRMED} in part`;
  return ` (${[state, ...unspokenIn(entries)].join('; ')})`;
}

/** True where there are standing entries and not one of them is confirmed. */
export const noneConfirmed = (entries: readonly Entry[]): boolean => {
  const standing = entries.filter(({ state }) => state === 'heard' || state === 'confirmed');
  return standing.length > 0 && standing.every(({ state }) => state === 'heard');
};

/** The ids of entries, in order. */
export const idsOf = (entries: readonly Entry[]): readonly string[] => entries.map(({ id }) => id);
