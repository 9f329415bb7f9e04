// What was sent, read back and asked is logged with its time, comes out as it went in, and touches no entry.

import { describe, expect, it } from 'vitest';
import {
  beginExam,
  fold,
  type HandoverStep,
  handOver,
  migrate,
  type RecordEvent,
} from '../../src/record/index.ts';

const START = Date.parse('2026-05-03T14:00:00Z');
const reader = { begin: () => null, read: () => ({ frames: [], context: null }) };
const begun = () => beginExam(reader, { device: 'field', startedAt: START, zone: 'UTC' });

const STEPS: readonly HandoverStep[] = [
  {
    step: 'sent',
    part: 'script',
    piece: 1,
    of: 2,
    text: 'Pulse one one two. break',
    entries: ['field-3'],
    by: 'person',
    made: '2026-05-03T14:00:40Z',
  },
  {
    step: 'read-back',
    heard: 'pulse one one zero',
    rows: [{ kind: 'differs', value: 'pulse one one two', sentence: 'They said pulse one one zero.' }],
  },
  { step: 'question', text: 'any blood thinners' },
  { step: 'answer', question: 'field-4', text: 'none' },
  { step: 'aside', text: 'roger that', engine: 'browser' },
];

const all = () =>
  STEPS.reduce((exam, step, index) => handOver(exam, step, START + (index + 1) * 60_000), begun());

describe('the handing over', () => {
  it('is kept in order, each step with its own time and name, and makes no entry', () => {
    const { state } = all();
    expect(state.handover.map(({ step }) => step)).toEqual(STEPS.map(({ step }) => step));
    expect(state.handover.map(({ id }) => id)).toEqual([
      'field-2',
      'field-3',
      'field-4',
      'field-5',
      'field-6',
    ]);
    expect(state.handover.map(({ at }) => Date.parse(at))).toEqual(
      STEPS.map((_, index) => START + (index + 1) * 60_000),
    );
    expect(state.entries).toEqual([]);
  });

  it('comes out of the stored log as it went in', () => {
    const exam = all();
    const read = (JSON.parse(JSON.stringify(exam.events)) as unknown[])
      .map(migrate)
      .flatMap((one): readonly RecordEvent[] => (one.kind === 'event' ? [one.event] : []));
    expect(fold(read)).toEqual(exam.state);
  });

  it('is one step where its event comes twice', () => {
    const { events, state } = all();
    expect(fold(events.flatMap((event) => [event, event])).handover).toEqual(state.handover);
  });
});
