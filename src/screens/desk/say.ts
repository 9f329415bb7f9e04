// Words become entries: each line is heard by the record at once, or as soon as the reader is there.

import { batch } from '@preact/signals';
import { hearUtterance } from '../../record/index.ts';
import { recordToUse } from './begin.ts';
import { type Desk, setRecord } from './desk.ts';
import { timeIn } from './open-record.ts';
import type { TalkReader } from './reader.ts';

export interface Said {
  /** which ear heard it: `typed`, `pasted`, `browser` … */
  readonly engine: string;
  /** 0 to 1 */
  readonly confidence?: number;
  readonly alternatives?: readonly string[];
  /** wall clock, epoch ms; the default is now */
  readonly at?: number;
}

/** Says some lines one after another; empty ones are passed over. Gives how many were said. */
export function say(desk: Desk, lines: readonly string[], said: Said): number {
  const words = lines
    .map((line) => line.trim())
    .filter((text) => text !== '' && desk.aside.peek()?.({ text, engine: said.engine }) !== true);
  const at = said.at ?? desk.clock();
  const reader = desk.reader.value;
  if (reader === null) {
    const more = words.map((text) => ({ text, at, engine: said.engine }));
    desk.waiting.value = [...desk.waiting.value, ...more];
  } else if (words.length > 0) hear(desk, reader, words, { ...said, at });
  return words.length;
}

function hear(desk: Desk, reader: TalkReader, words: readonly string[], said: Said & { at: number }): void {
  const record = recordToUse(desk, reader, said.at);
  const heardAt = timeIn(record, said.at);
  const { zone } = record.exam;
  const { engine, confidence, alternatives } = said;
  const exam = words.reduce(
    (before, text) =>
      hearUtterance(before, reader, {
        text,
        heardAt,
        zone,
        engine,
        ...(confidence === undefined ? {} : { confidence }),
        ...(alternatives === undefined ? {} : { alternatives }),
      }),
    record.exam,
  );
  batch(() => setRecord(desk, { ...record, exam }));
}

/** Says what was waiting for the reader, each at the time it was said. */
export function sayWaiting(desk: Desk): void {
  const waiting = desk.waiting.value;
  desk.waiting.value = [];
  for (const { text, at, engine } of waiting) say(desk, [text], { engine, at });
}
