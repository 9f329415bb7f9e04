// What the ear heard goes into the open record at the time it was said, and so do the gaps in which it could not hear.

import { hearUtterance, logUnheard } from '../../record/index.ts';
import { type CompressedSound, compressed } from '../../speech/compressed/index.ts';
import { notUnderstood } from '../../speech/index.ts';
import type { Gap, RecordingHeard } from '../../speech/supervisor/index.ts';
import type { Heard } from '../../speech/worker/messages.ts';
import { beginRecord, type Desk, done, say, setRecord, timeIn, trouble } from '../desk/index.ts';

/** Says what was heard; speech that was not understood is kept as such, with its times since the record began. */
export function sayHeard(desk: Desk, { utterance, from, to, sound }: Heard): void {
  const { text, understood, start: _start, end: _end, ...told } = utterance;
  const record = desk.record.value;
  const began = record === null ? from : Date.parse(record.facts.startedAt) - record.ahead;
  const since = (time: number): number => Math.max(0, time - began) / 1000;
  const words = understood ? text : notUnderstood(since(from), since(to));
  say(desk, [words], { ...told, at: Math.round(from), sound: compressed(sound) });
}

/** Logs a gap in the open record; before the first words there is no record, and nothing that could be missing in it. */
export function logGap(desk: Desk, { from, to, why }: Gap): void {
  const [record, reader] = [desk.record.value, desk.reader.value];
  if (record === null || reader === null) return;
  const stretch = { from: timeIn(record, from), to: timeIn(record, to), why };
  setRecord(desk, { ...record, exam: logUnheard(record.exam, reader.begin(), stretch) });
}

/** Opens what was heard of a recording as a record of its own that begins now, and says what was missing. */
export function openHeard(desk: Desk, name: string, heard: RecordingHeard): void {
  const reader = desk.reader.value;
  if (heard.kind === 'unheard') desk.notice.value = trouble(`${name} ${heard.why}.`);
  else if (reader === null || desk.door.now.peek().state === 'locked')
    desk.notice.value = trouble(
      'A recording was not opened, as the page was locked meanwhile. Open it again.',
    );
  else if (heard.utterances.length === 0) desk.notice.value = trouble(`${name} holds no speech.`);
  else {
    const [startedAt, { zone }] = [desk.clock(), desk];
    const begun = beginRecord(desk, reader, { kind: 'opened', title: name, startedAt, zone });
    const sounds: [utterance: string, sound: CompressedSound][] = [];
    const exam = heard.utterances.reduce((before, one) => {
      const { understood: _understood, start, end: _end, sound, ...told } = one;
      const heardAt = startedAt + Math.round(start * 1000);
      const next = hearUtterance(before, reader, { ...told, heardAt, zone });
      const uttered = next.events.slice(before.events.length).find(({ kind }) => kind === 'utterance');
      if (uttered !== undefined) sounds.push([uttered.id, sound]);
      return next;
    }, begun.exam);
    const length = Math.max(...heard.utterances.map(({ end }) => end));
    setRecord(desk, { ...begun, exam, ahead: Math.round(length * 1000) });
    for (const [utterance, sound] of sounds) desk.keepSound(begun.facts.id, utterance, sound);
    const cut = heard.cut === null ? '' : ` It ${heard.cut}.`;
    desk.notice.value = (cut === '' ? done : trouble)(
      `${name} was heard and opened as a record of its own; others stay under Records.${cut}`,
    );
  }
}
