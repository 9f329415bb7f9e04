// Words become entries: each line is heard by the record at once, or as soon as the reader is there.

import { batch } from '@preact/signals';
import { type HeardUtterance, hearUtterance, turnIn } from '../../record/index.ts';
import type { Clip } from '../../record/store/index.ts';
import { recordToUse } from './begin.ts';
import { type Desk, setRecord, type Waiting } from './desk.ts';
import { timeIn } from './open-record.ts';
import type { TalkReader } from './reader.ts';

/** Whatever else an ear can tell of its words goes into the record with them. */
export interface Said extends Omit<HeardUtterance, 'text' | 'heardAt' | 'zone'> {
  /** which ear heard it: `typed`, `pasted`, `browser` … */
  readonly engine: string;
  /** wall clock, epoch ms; the default is now */
  readonly at?: number;
  /** how it sounded; kept apart from the record, and no part of it */
  readonly sound?: Clip;
}

/** Says some lines one after another; empty ones are passed over. Gives how many were said. */
export function say(desk: Desk, lines: readonly string[], said: Said): number {
  const words = lines
    .map((line) => line.trim())
    .filter((text) => text !== '' && desk.aside.peek()?.({ text, engine: said.engine }) !== true);
  const at = said.at ?? desk.clock();
  const waiting = words.map((text): Waiting => ({ ...said, text, at }));
  desk.waiting.value = [...desk.waiting.value, ...waiting];
  sayWaiting(desk);
  return words.length;
}

/**
 * Says what waits, each line at the time it was said, until there is none, the page may not write, or the talk turns to another patient: what
 * comes after that is of the other one, and waits until the other record is open.
 */
export function sayWaiting(desk: Desk): void {
  const reader = desk.reader.value;
  if (reader === null || desk.role.value !== 'writes') return;
  batch(() => {
    while (desk.turning.value === null) {
      const [next, ...later] = desk.waiting.value;
      if (next === undefined) return;
      desk.waiting.value = later;
      hear(desk, reader, next);
    }
  });
}

function hear(desk: Desk, reader: TalkReader, { at, sound, ...said }: Waiting): void {
  const record = recordToUse(desk, reader, at);
  const exam = hearUtterance(
    record.exam,
    reader,
    { ...said, heardAt: timeIn(record, at), zone: record.exam.zone },
    record.exam.state.filing.patient,
  );
  const fresh = exam.events.slice(record.exam.events.length);
  const turn = fresh.flatMap((event) => turnIn(event) ?? []).at(-1);
  setRecord(desk, { ...record, exam });
  const uttered = fresh.find(({ kind }) => kind === 'utterance');
  if (sound !== undefined && uttered !== undefined) desk.keepSound(record.facts.id, uttered.id, sound);
  if (turn === undefined) return;
  desk.turning.value = turn.meant;
  if (turn.rest === null) return;
  const rest = { ...said, ...(sound === undefined ? {} : { sound }), text: turn.rest, at };
  desk.waiting.value = [rest, ...desk.waiting.value];
}
