// Makes the board's rows: what a record says is worked out by the clinical stage, and only for what changed.

import { rankOfPatient, worstFirst } from '../clinical/incident/index.ts';
import { type Memo, type Reckoning, reckonAfter } from '../clinical/index.ts';
import type { BoardRow } from '../link/index.ts';
import { type RecordState, stands } from '../record/index.ts';
import { readingText, series, vitalName } from '../timeline/index.ts';
import type { Desk } from './desk-parts.ts';
import type { PostRecord } from './records.ts';

interface Made {
  readonly version: number;
  readonly minute: number;
  readonly asked: number;
  readonly row: BoardRow;
  readonly memo: Memo;
}

export interface Rows {
  /** all rows, worst first; one that nothing happened to is the very same object as before */
  read(): Promise<readonly BoardRow[]>;
}

const MINUTE = 60_000;

/** Rows for the desk's records; `clock` gives epoch ms. */
export function createRows(desk: Desk, clock: () => number): Rows {
  const made = new Map<string, Made>();
  return {
    read: async () => {
      const devices = new Map(desk.devices().map((one) => [one.device, one]));
      const rows: BoardRow[] = [];
      for (const record of desk.records.all()) {
        const { id } = record.facts;
        const minute = Math.floor(clock() / MINUTE);
        const asked = desk.questions().length;
        const before = made.get(id);
        if (before?.version === record.version && before.minute === minute && before.asked === asked) {
          rows.push(before.row);
          continue;
        }
        const { version } = record;
        const state = await desk.records.state(id);
        const writer = devices.get(record.writer);
        // What is due is asked by the clock that the record was written by.
        const now = clock() + (writer?.ahead ?? 0);
        const { reckoning, memo } = reckonAfter(before?.memo ?? null, state.entries, {
          now,
          problems: state.problemChanges,
        });
        const name = (device: string): string => devices.get(device)?.name ?? device;
        const row = rowOf(
          record,
          state,
          reckoning,
          name,
          [
            ...record.refused.slice(-5),
            ...(writer?.troubles ?? []).map((trouble) => `${name(record.writer)}: ${trouble}`),
          ],
          desk,
        );
        made.set(id, { version, minute, asked, row, memo });
        rows.push(row);
      }
      return worstFirst(rows);
    },
  };
}

function rowOf(
  record: PostRecord,
  state: RecordState,
  reckoning: Reckoning,
  name: (device: string) => string,
  troubles: readonly string[],
  desk: Desk,
): BoardRow {
  const { facts } = record;
  const { patient, label, tag, place, closed } = state.filing;
  const entries = state.entries.filter(stands);
  const named = entries.findLast((entry) => entry.kind === 'history' && entry.topic === 'name');
  const { due } = reckoning;
  return {
    record: facts.id,
    kind: facts.kind,
    patient,
    label,
    tag,
    place,
    closed,
    name: named?.kind === 'history' ? named.text : '',
    ...rankOfPatient(reckoning),
    reds: reckoning.flags.filter(({ level, state: stands }) => level === 'red' && stands === 'met').length,
    vitals: series(entries).flatMap(({ vital, readings }) => {
      const last = readings.at(-1);
      return last === undefined
        ? []
        : [
            {
              name: vitalName(vital),
              reading: readingText(last),
              at: last.at,
              confirmed: last.state === 'confirmed',
            },
          ];
    }),
    flags: reckoning.flags
      .filter(({ state: stands }) => stands === 'met')
      .map(({ level, text, unconfirmed, evidence, source }) => ({
        level,
        text,
        unconfirmed: unconfirmed.length,
        of: evidence.length,
        source,
      })),
    trends: reckoning.patterns.map(({ text }) => text),
    due: due.reminder,
    overdueMinutes: due.overdueMinutes,
    begunBy: name(record.begunBy),
    writer: name(record.writer),
    also: [...record.also].map(name),
    unconfirmed: entries.filter((entry) => entry.state === 'heard').length,
    entries: entries.length,
    heardAt: record.heardAt,
    troubles,
    questions: desk
      .questions()
      .filter((question) => question.record === facts.id)
      .map(({ id, text, at }) => {
        const there = record.asked.get(id);
        return { id, text, at, there: there !== undefined, answer: there?.answer ?? null };
      }),
  };
}
