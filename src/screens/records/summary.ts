// What a list shows of a record without reading its log.

import { type Filing, UNFILED } from '../../record/index.ts';
import type { RecordFacts, RecordRow } from '../../record/store/index.ts';
import type { OpenRecord } from '../desk/open-record.ts';

export interface Summary extends Filing {
  /** the patient's name as it was said last, or empty */
  readonly name: string;
  /** ISO 8601 with offset, or empty */
  readonly lastHeardAt: string;
  /** how many entries stand */
  readonly entries: number;
}

/** A record as a list shows it. */
export interface Shown {
  readonly facts: RecordFacts;
  readonly summary: Summary;
}

/** The summary of a record as it stands. */
export function summaryOf({ facts, exam: { state } }: OpenRecord): Summary {
  const named = state.entries.findLast(
    (entry) =>
      entry.kind === 'history' &&
      entry.topic === 'name' &&
      entry.state !== 'struck' &&
      entry.state !== 'replaced',
  );
  return {
    ...state.filing,
    incident: state.filing.incident === '' ? facts.id : state.filing.incident,
    name: named?.kind === 'history' ? named.text : '',
    lastHeardAt: state.utterances.at(-1)?.heardAt ?? '',
    entries: state.entries.filter((entry) => entry.state === 'heard' || entry.state === 'confirmed').length,
  };
}

/** A kept record as it is listed; what its summary lacks is as in a record that nobody filed. */
export function shownOf({ facts, summary }: Pick<RecordRow, 'facts' | 'summary'>): Shown {
  const text = (name: 'incident' | 'label' | 'tag' | 'place' | 'name' | 'lastHeardAt'): string =>
    typeof summary[name] === 'string' ? summary[name] : '';
  const number = (name: 'patient' | 'entries', otherwise: number): number =>
    typeof summary[name] === 'number' ? summary[name] : otherwise;
  return {
    facts,
    summary: {
      incident: text('incident') || facts.id,
      patient: number('patient', UNFILED.patient),
      label: text('label'),
      tag: text('tag'),
      place: text('place'),
      closed: summary.closed === true,
      name: text('name'),
      lastHeardAt: text('lastHeardAt'),
      entries: number('entries', 0),
    },
  };
}
