// What the ear heard goes into the open record at the time it was said, and so do the gaps in which it could not hear.

import { logUnheard } from '../../record/index.ts';
import { notUnderstood } from '../../speech/index.ts';
import type { Gap } from '../../speech/supervisor/index.ts';
import type { Heard } from '../../speech/worker/messages.ts';
import { type Desk, say, setRecord, timeIn } from '../desk/index.ts';

/** Says what was heard; speech that was not understood is kept as such, with its times since the record began. */
export function sayHeard(desk: Desk, { utterance, from, to }: Heard): void {
  const { text, understood, engine, confidence } = utterance;
  const record = desk.record.value;
  const began = record === null ? from : Date.parse(record.facts.startedAt) - record.ahead;
  const since = (time: number): number => Math.max(0, time - began) / 1000;
  const words = understood ? text : notUnderstood(since(from), since(to));
  say(desk, [words], { engine, confidence, at: Math.round(from) });
}

/** Logs a gap in the open record; before the first words there is no record, and nothing that could be missing in it. */
export function logGap(desk: Desk, { from, to, why }: Gap): void {
  const [record, reader] = [desk.record.value, desk.reader.value];
  if (record === null || reader === null) return;
  const stretch = { from: timeIn(record, from), to: timeIn(record, to), why };
  setRecord(desk, { ...record, exam: logUnheard(record.exam, reader.begin(), stretch) });
}
