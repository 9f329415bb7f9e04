// A played talk may turn from one patient to another: each has a record of their own, as in the terminal.

import { fileExam, type HeardUtterance, hearUtterance, turnIn, turnTo } from '../../record/index.ts';
import { beginRecord, type Desk, type OpenRecord, type TalkReader } from '../desk/index.ts';

export interface Cast {
  readonly records: ReadonlyMap<number, OpenRecord>;
  readonly current: number;
  readonly before?: number;
}

/** The cast of a talk of which nothing was said yet. */
export const castOf = (record: OpenRecord): Cast => ({ records: new Map([[1, record]]), current: 1 });

/** The record of the patient that the talk is of now. */
export function inMind({ records, current }: Cast): OpenRecord {
  const record = records.get(current);
  if (record === undefined) throw new Error('nobody is in mind');
  return record;
}

/** The cast after one more utterance. */
export function hearInCast(desk: Desk, reader: TalkReader, cast: Cast, utterance: HeardUtterance): Cast {
  const record = inMind(cast);
  const exam = hearUtterance(record.exam, reader, utterance, cast.current);
  const heard = { ...cast, records: new Map(cast.records).set(cast.current, { ...record, exam }) };
  const turn = exam.events
    .slice(record.exam.events.length)
    .flatMap((event) => turnIn(event) ?? [])
    .at(-1);
  if (turn === undefined) return heard;
  const to = turnTo({ known: [...heard.records.keys()], ...heard }, turn.meant);
  if (to.kind === 'no-such-patient') return heard;
  const records = new Map(heard.records);
  if (to.kind === 'begin') records.set(to.patient, begun(desk, reader, heard, to.patient, utterance));
  const turned = to.patient === cast.current ? heard : { records, current: to.patient, before: cast.current };
  return turn.rest === null ? turned : hearInCast(desk, reader, turned, { ...utterance, text: turn.rest });
}

function begun(
  desk: Desk,
  reader: TalkReader,
  { records }: Cast,
  patient: number,
  { heardAt, zone }: HeardUtterance,
): OpenRecord {
  const [first] = records.values();
  if (first === undefined) throw new Error('a cast has a first patient');
  const { kind, title, id } = first.facts;
  const record = beginRecord(desk, reader, { kind, title, startedAt: heardAt, zone });
  return { ...record, exam: fileExam(record.exam, { incident: id, patient }, heardAt) };
}
