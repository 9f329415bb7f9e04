// Which kept records a word means, and what is told of them: where two fit, both are named and neither is opened.

import type { RecordMeant } from '../../parse/index.ts';
import { byIncident, plain, wordsOf } from './search.ts';
import type { Shown } from './summary.ts';
import { whoIs } from './who.ts';

/** The list on the page: while it is there, its numbers can be seen. */
export const KEPT_RECORDS = 'kept-records';

/** What was asked for by word. */
export interface Wanted {
  readonly meant: RecordMeant | 'new';
  /** true where the list could be seen when it was asked for: what was read there may be opened, as by a press */
  readonly isListed: boolean;
}

/** The records in the order of the list: the first has number 1. */
export const inListOrder = (records: readonly Shown[]): readonly Shown[] =>
  byIncident(records).flatMap(({ records: some }) => some);

/** True where every one of the words is a word of the record; half a word is none, lest a "2" be the year. */
function isKnownBy(shown: Shown, said: string): boolean {
  const known = new Set(wordsOf(shown));
  const words = plain(said).match(/[\p{L}\p{N}'’-]+/gu) ?? [];
  return words.length > 0 && words.every((word) => known.has(word));
}

/** Those of the records, in list order, that are meant. */
export function recordsMeant(listed: readonly Shown[], meant: RecordMeant): readonly Shown[] {
  if ('place' in meant) return listed.slice(meant.place - 1, meant.place);
  if ('patient' in meant) return listed.filter(({ summary }) => summary.patient === meant.patient);
  return listed.filter((one) => isKnownBy(one, meant.words));
}

/** `Record 2: Patient 1, Ada, 2026-05-03, 14:02, closed`. */
export function recordInWords(listed: readonly Shown[], one: Shown): string {
  const { startedAt } = one.facts;
  const when = `${startedAt.slice(0, 10)}, ${startedAt.slice(11, 16)}`;
  const closed = one.summary.closed ? ', closed' : '';
  return `Record ${listed.indexOf(one) + 1}: ${whoIs(one.summary)}, ${when}${closed}`;
}

/** More than so many are counted: nobody keeps a longer list in the ear. Our choice, no source. */
const MOST = 3;

/** What is told where not one record fits, but none or several. */
export function notOne(listed: readonly Shown[], found: readonly Shown[]): string {
  if (found.length === 0) return 'No record here is that one; none was opened.';
  const named = found.slice(0, MOST).map((one) => `${recordInWords(listed, one)}.`);
  const more = found.length > MOST ? [`And ${found.length - MOST} more.`] : [];
  return [
    `${found.length} records fit; none was opened.`,
    ...named,
    ...more,
    'Say “open record”, and its number.',
  ].join(' ');
}
