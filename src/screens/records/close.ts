// Closing a record and opening it again; both are logged in it, and closing lets the sound of its utterances go.

import { fileExam } from '../../record/index.ts';
import { type Desk, type OpenRecord, setRecord, type TalkReader, timeIn } from '../desk/index.ts';
import type { Sounds } from '../sound/index.ts';
import { openKept } from './restore.ts';
import { newRecord } from './switch.ts';

const filed = (desk: Desk, record: OpenRecord, file: Parameters<typeof fileExam>[1]): OpenRecord => ({
  ...record,
  exam: fileExam(record.exam, file, timeIn(record, desk.clock())),
});

/** Files the open record anew: its label, its tag, its place. */
export function fileOpen(desk: Desk, file: Parameters<typeof fileExam>[1]): void {
  const record = desk.record.value;
  if (record !== null) setRecord(desk, filed(desk, record, file));
}

/** Closes the open record; it stays kept and can be opened again. Its sound goes unless it is to be kept. */
export async function closeOpen(
  desk: Desk,
  sounds: Pick<Sounds, 'drop' | 'settled'>,
  keepSound: boolean,
): Promise<void> {
  const id = desk.record.value?.facts.id;
  fileOpen(desk, { closed: true });
  await desk.keeper.settled();
  if (keepSound) await sounds.settled();
  else if (id !== undefined) await sounds.drop(id).catch(() => undefined);
  newRecord(desk);
}

/** Opens a kept record; one that was closed is closed no longer. */
export async function reopen(desk: Desk, reader: TalkReader, id: string): Promise<void> {
  await openKept(desk, reader, id);
  const record = desk.record.value;
  if (record?.facts.id === id && record.exam.state.filing.closed) fileOpen(desk, { closed: false });
}
