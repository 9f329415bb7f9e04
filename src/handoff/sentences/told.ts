// Words with the entries they tell, before the mark of what is unconfirmed is set: each report sets it in its own way.

import type { Entry } from '../../record/entry.ts';
import type { Sentence } from '../text.ts';
import { idsOf, markOf, trustIn, unspokenIn } from './trust.ts';

export interface Told {
  /** prose without mark or full stop; slots that were not spoken are marked in it only where `slots` says so */
  readonly words: string;
  readonly entries: readonly Entry[];
  /** `inside` where each part of the words carries its own mark of what was not spoken */
  readonly slots?: 'inside';
  /** `inside` where each part of the words says whether it is confirmed */
  readonly state?: 'inside';
  /** where the words join several things said, each of them by itself */
  readonly clauses?: readonly Told[];
}

const stateOnly = (entries: readonly Entry[]): string =>
  markOf(entries.map((entry) => ({ ...entry, known: {} })));

/** The sentence as it is written: `Right wrist: swelling (unconfirmed; side not spoken).` */
export function written(told: Told): Sentence {
  const mark =
    told.state === 'inside' ? '' : told.slots === 'inside' ? stateOnly(told.entries) : markOf(told.entries);
  return {
    text: `${told.words}${mark}.`,
    entries: idsOf(told.entries),
    ...(told.clauses === undefined ? {} : { clauses: told.clauses.map(written) }),
  };
}

/** The words with what was not spoken marked in them, whatever is confirmed: ` (side not spoken)`. */
export function withSlots(told: Told): string {
  const slots = told.slots === 'inside' || told.state === 'inside' ? [] : unspokenIn(told.entries);
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
