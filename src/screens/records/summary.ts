// What a list shows of a record without reading its log.

import type { OpenRecord } from '../desk/open-record.ts';

export interface Summary {
  /** the patient's name as it was said last, or empty */
  readonly name: string;
  /** ISO 8601 with offset, or empty */
  readonly lastHeardAt: string;
  readonly entries: number;
}

/** The summary of a record as it stands. */
export function summaryOf({ exam: { state } }: OpenRecord): Record<keyof Summary, Summary[keyof Summary]> {
  const named = state.entries.findLast(
    (entry) =>
      entry.kind === 'history' &&
      entry.topic === 'name' &&
      entry.state !== 'struck' &&
      entry.state !== 'replaced',
  );
  return {
    name: named?.kind === 'history' ? named.text : '',
    lastHeardAt: state.utterances.at(-1)?.heardAt ?? '',
    entries: state.entries.filter((entry) => entry.state === 'heard' || entry.state === 'confirmed').length,
  };
}

/** The summary as it was kept; what is not there is empty. */
export function readSummary(kept: Readonly<Record<string, unknown>>): Summary {
  const text = (name: keyof Summary): string => (typeof kept[name] === 'string' ? kept[name] : '');
  return {
    name: text('name'),
    lastHeardAt: text('lastHeardAt'),
    entries: typeof kept.entries === 'number' ? kept.entries : 0,
  };
}
