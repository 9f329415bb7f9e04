// The log and its fold: every utterance kept, state rebuilt from events, taps as events. All talk is invented.

import { describe, expect, it } from 'vitest';
import {
  beginExam,
  confirmEntries,
  EMPTY,
  editEntry,
  fold,
  hearUtterance,
  type RecordEvent,
  retimeEntry,
  step,
  strikeEntries,
  UNREADABLE,
} from '../../src/record/index.ts';
import { fakeReader, finding, hearAll, note, pulse, START, ZONE } from './fake-reader.ts';

const TAP = START + 3_600_000;

const talk = () =>
  hearAll({
    'left wrist swollen': [finding()],
    'pulse 92': [pulse(92)],
    'no, 94': [{ change: { change: 'number', value: 94 } }],
    mumble: [note('mumble')],
    'strike that': [{ change: { change: 'strike' } }],
    'nothing to see': [],
  });

describe('the log', () => {
  it('keeps every utterance, word for word, and before what was made of it', () => {
    const exam = talk();
    expect(exam.state.utterances.map(({ text }) => text)).toEqual([
      'left wrist swollen',
      'pulse 92',
      'no, 94',
      'mumble',
      'strike that',
      'nothing to see',
    ]);
    expect(exam.events.map(({ kind }) => kind)).toEqual([
      'started',
      'utterance',
      'entered',
      'utterance',
      'entered',
      'utterance',
      'corrected',
      'utterance',
      'entered',
      'utterance',
      'struck',
      'utterance',
    ]);
  });

  it('numbers its events from one, each with the device in its identifier', () => {
    const { events } = talk();
    expect(events.map(({ seq }) => seq)).toEqual(events.map((_event, index) => index + 1));
    expect(events.map(({ id }) => id)).toEqual(events.map((_event, index) => `test-${index + 1}`));
  });

  it('gives every entry its own identifier', () => {
    const ids = talk().state.entries.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('keeps alternatives, engine and confidence with the words', () => {
    const reader = fakeReader({ hm: [] });
    const begun = beginExam(reader, { device: 'test', startedAt: START, zone: ZONE });
    const heard = {
      text: 'hm',
      heardAt: START,
      zone: ZONE,
      alternatives: ['ham'],
      engine: 'typed',
      confidence: 0.5,
    };
    expect(hearUtterance(begun, reader, heard).events.at(-1)).toMatchObject({
      kind: 'utterance',
      payload: { text: 'hm', alternatives: ['ham'], engine: 'typed', confidence: 0.5 },
    });
  });

  it('goes on after a reader that fails, with the words as a note', () => {
    const reader = fakeReader({});
    const begun = beginExam(reader, { device: 'test', startedAt: START, zone: ZONE });
    const exam = hearUtterance(begun, reader, { text: 'left wrist', heardAt: START, zone: ZONE });
    expect(exam.state.entries).toMatchObject([{ kind: 'note', text: 'left wrist', doubt: [UNREADABLE] }]);
  });
});

describe('the fold', () => {
  it('rebuilds from the events, written out and read back, what was built step by step', () => {
    const exam = talk();
    const stored = JSON.parse(JSON.stringify(exam.events)) as RecordEvent[];
    expect(fold(stored)).toEqual(exam.state);
  });

  it('goes on from any earlier state', () => {
    const { events, state } = talk();
    for (let cut = 0; cut <= events.length; cut += 1) {
      expect(fold(events.slice(cut), fold(events.slice(0, cut)))).toEqual(state);
    }
  });

  it('never alters an earlier state', () => {
    const { events } = talk();
    let state = EMPTY;
    for (const event of events) {
      const before = JSON.stringify(state);
      const next = step(state, event);
      expect(JSON.stringify(state)).toBe(before);
      state = next;
    }
  });

  it('makes one entry of an event that comes twice', () => {
    const { events, state } = talk();
    const twice: readonly RecordEvent[] = events.flatMap((event): readonly RecordEvent[] =>
      event.kind === 'entered' ? [event, event] : [event],
    );
    expect(fold(twice).entries).toEqual(state.entries);
  });

  it('shows what is whole of a log that was cut in the middle', () => {
    const { events } = talk();
    const cut = events.filter((event) => event.id !== 'test-5');
    expect(fold(cut).entries.map((entry) => entry.kind)).toEqual(['finding', 'vital', 'note']);
  });
});

describe('confirming by voice', () => {
  it('confirms the last thing said and nothing before it', () => {
    const { entries } = hearAll({
      a: [finding()],
      b: [pulse(92)],
      confirmed: [{ command: 'confirm' }],
    }).state;
    expect(entries.map((entry) => entry.state)).toEqual(['heard', 'confirmed']);
  });

  it('leaves what is in doubt for a person to settle', () => {
    const { entries } = hearAll({
      a: [{ ...finding(), doubt: ['which side?'] }, finding({ finding: 'pain' })],
      confirmed: [{ command: 'confirm' }],
    }).state;
    expect(entries.map((entry) => entry.state)).toEqual(['heard', 'confirmed']);
  });

  it('confirms one by one what is easily misheard: a side, a negative, a number', () => {
    const states = (...confirms: readonly string[]) =>
      hearAll({
        a: [finding(), finding({ present: false }), pulse(92)],
        ...Object.fromEntries(confirms.map((words) => [words, [{ command: 'confirm' as const }]])),
      }).state.entries.map(({ state }) => state);
    expect(states('confirm')).toEqual(['confirmed', 'heard', 'heard']);
    expect(states('confirm', 'confirmed')).toEqual(['confirmed', 'confirmed', 'heard']);
    expect(states('confirm', 'confirmed', 'yes confirm')).toEqual(['confirmed', 'confirmed', 'confirmed']);
  });

  it('confirms together what can be mistaken for nothing else, and that before the rest', () => {
    const plain = (site: 'skull' | 'sternum') => finding({ site, side: null });
    const { entries } = hearAll({
      a: [finding(), plain('skull'), plain('sternum')],
      confirm: [{ command: 'confirm' }],
    }).state;
    expect(entries.map(({ state }) => state)).toEqual(['heard', 'confirmed', 'confirmed']);
  });

  it('confirms at once what was said of the same side of the same place', () => {
    const { entries } = hearAll({
      a: [finding(), finding({ finding: 'deformity' }), finding({ side: 'right' })],
      confirm: [{ command: 'confirm' }],
    }).state;
    expect(entries.map(({ state }) => state)).toEqual(['confirmed', 'confirmed', 'heard']);
  });

  it('goes on to what else was said in the same words, and no further', () => {
    const apart = { ...pulse(92), group: 1 };
    const { entries } = hearAll({
      before: [finding()],
      a: [finding({ site: 'elbow' }), apart],
      confirm: [{ command: 'confirm' }],
      confirmed: [{ command: 'confirm' }],
      'i confirm': [{ command: 'confirm' }],
    }).state;
    expect(entries.map(({ state }) => state)).toEqual(['heard', 'confirmed', 'confirmed']);
  });

  it('is not done by another command', () => {
    const { entries } = hearAll({ a: [finding()], help: [{ command: 'help' }] }).state;
    expect(entries.map((entry) => entry.state)).toEqual(['heard']);
  });
});

describe('a tap', () => {
  it('confirms an entry and settles its doubt', () => {
    const exam = hearAll({ a: [{ ...finding(), doubt: ['which side?'] }] });
    const [entry] = confirmEntries(
      exam,
      exam.state.entries.map(({ id }) => id),
      TAP,
    ).state.entries;
    expect(entry?.state).toBe('confirmed');
    expect(entry?.doubt).toBeUndefined();
  });

  it('strikes an entry, and neither confirms nor edits it afterwards', () => {
    const exam = hearAll({ a: [finding()] });
    const id = exam.state.entries[0]?.id ?? '';
    const struck = strikeEntries(exam, [id], TAP);
    expect(struck.state.entries).toMatchObject([{ state: 'struck' }]);
    expect(confirmEntries(struck, [id], TAP)).toBe(struck);
    expect(editEntry(struck, id, { change: 'side', side: 'right' }, TAP).kind).toBe('refused');
  });

  it('edits an entry into a new one that keeps the words and waits to be confirmed', () => {
    const exam = hearAll({ 'left wrist swollen': [finding()] });
    const id = exam.state.entries[0]?.id ?? '';
    const edited = editEntry(exam, id, { change: 'side', side: 'right' }, TAP);
    expect(edited).toMatchObject({
      kind: 'edited',
      exam: {
        state: {
          entries: [
            { state: 'replaced', side: 'left' },
            { state: 'heard', side: 'right', heard: 'left wrist swollen' },
          ],
        },
      },
    });
  });

  it('puts an entry at another time, which waits to be confirmed and cannot lie ahead', () => {
    const exam = hearAll({ 'left wrist swollen': [{ ...finding(), doubt: ['which side?'] }] });
    const id = exam.state.entries[0]?.id ?? '';
    const earlier = retimeEntry(exam, id, START - 60_000, TAP);
    expect(earlier).toMatchObject({
      kind: 'edited',
      exam: {
        state: {
          entries: [
            { state: 'replaced' },
            { state: 'heard', at: '2026-05-03T14:01:00-06:00', side: 'left', doubt: ['which side?'] },
          ],
        },
      },
    });
    expect(retimeEntry(exam, id, TAP + 1, TAP).kind).toBe('refused');
    expect(retimeEntry(exam, id, START + 60_000, TAP).kind).toBe('same');
  });

  it('takes the time that was said with a whole statement anew', () => {
    const exam = hearAll({ a: [pulse(92)] });
    const id = exam.state.entries[0]?.id ?? '';
    const { statement } = pulse(94);
    const edited = editEntry(
      exam,
      id,
      { change: 'statement', statement },
      TAP,
      'pulse 94 at 14:00',
      START - 120_000,
    );
    expect(edited).toMatchObject({
      exam: { state: { entries: [{ state: 'replaced' }, { at: '2026-05-03T14:00:00-06:00' }] } },
    });
  });

  it('refuses an edit that makes no sense or cannot be', () => {
    const exam = hearAll({ a: [pulse(92)] });
    const id = exam.state.entries[0]?.id ?? '';
    expect(editEntry(exam, id, { change: 'side', side: 'right' }, TAP).kind).toBe('refused');
    expect(editEntry(exam, id, { change: 'number', value: 1200 }, TAP).kind).toBe('refused');
    expect(editEntry(exam, id, { change: 'number', value: 92 }, TAP).kind).toBe('same');
    expect(editEntry(exam, 'none', { change: 'strike' }, TAP).kind).toBe('refused');
  });
});
