// Words with the entries they tell, before the mark of what is unconfirmed is set: each report sets it in its own way.

import type { Entry } from '../../record/entry.ts';
import type { Sentence } from '../text.ts';
import { idsOf, trustIn, UNCONFIRMED, unspokenIn } from './trust.ts';

export interface Told {
  /** prose without mark or full stop; slots that were not spoken are marked in it only where `slots` says so */
  readonly words: string;
  readonly entries: readonly Entry[];
  /** what was not spoken, if not simply all of it; `inside` where each part of the words carries its own mark of that */
  readonly slots?: 'inside' | readonly string[];
  /** `inside` where each part of the words says whether it is confirmed */
  readonly state?: 'inside';
  /** fewer words of the same, for a report that must be short; its time and details are left out */
  readonly short?: string;
  /** where the words join several things said, each of them by itself */
  readonly clauses?: readonly Told[];
}

/** What is to be marked as not spoken after the words. */
const slotsAfter = ({ slots, state, entries }: Told): readonly string[] =>
  slots === 'inside' || state === 'inside' ? [] : (slots ?? unspokenIn(entries));

const stateOf = (entries: readonly Entry[]): string => {
  const trust = trustIn(entries);
  return trust === 'in part' ? `${UNCONFIRMED} in part` : trust === 'unconfirmed' ? UNCONFIRMED : '';
};

/** The sentence as it is written: `Right wrist: swelling (unconfirmed; side carried).` */
export function written(told: Told): Sentence {
  const state = told.state === 'inside' ? '' : stateOf(told.entries);
  const marks = [state, ...slotsAfter(told)].filter((word) => word !== '');
  const mark = marks.length === 0 ? '' : ` (${marks.join('; ')})`;
  return {
    text: `${told.words}${mark}.`,
    entries: idsOf(told.entries),
    ...(told.clauses === undefined ? {} : { clauses: leavesOf(told).map(written) }),
  };
}

/** The single statements that it tells, each of which holds by itself; of one without clauses, itself. */
export const leavesOf = (told: Told): readonly Told[] =>
  told.clauses === undefined ? [told] : told.clauses.flatMap(leavesOf);

/** The words with what was not spoken marked in them, whatever is confirmed: ` (side carried)`. */
export function withSlots(told: Told): string {
  const slots = slotsAfter(told);
  return `${told.words}${slots.length === 0 ? '' : ` (${slots.join('; ')})`}`;
}

/**
 * Several things told in one sentence, `…; …`, each with its own mark of what was not spoken; and, where not all are
 * confirmed alike, of what is unconfirmed.
 */
export function joined(parts: readonly [Told, ...Told[]]): Told {
  const [first, ...others] = parts;
  if (others.length === 0) return first;
  const entries = parts.flatMap((part) => part.entries);
  const mixed = trustIn(entries) === 'in part' || parts.some(({ state }) => state === 'inside');
  const words = parts.map((part) => (mixed ? written(part).text.replace(/\.$/, '') : withSlots(part)));
  return {
    words: words.join('; '),
    entries,
    ...(mixed ? { state: 'inside' as const } : { slots: 'inside' as const }),
    clauses: parts,
  };
}
