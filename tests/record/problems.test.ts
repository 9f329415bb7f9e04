// What the responder does to the problem list is logged and folded, and no entry is touched by it.

import { describe, expect, it } from 'vitest';
import {
  BY_HAND,
  beginExam,
  changeProblems,
  fold,
  migrate,
  problemsChanging,
  type RecordEvent,
} from '../../src/record/index.ts';
import type { ProblemChange } from '../../src/terms/index.ts';

const START = Date.parse('2026-05-03T14:00:00Z');
const reader = { begin: () => null, read: () => ({ frames: [], context: null }) };
const begun = () => beginExam(reader, { device: 'field', startedAt: START, zone: 'UTC' });

const first: ProblemChange = { change: 'first', problem: { site: 'wrist', side: 'left' } };
const added: ProblemChange = { change: 'add', text: 'very cold' };

describe('a change of the problem list', () => {
  it('by hand is kept in the order made, with its time, and touches no entry', () => {
    const one = changeProblems(begun(), first, START + 60_000);
    const both = changeProblems(one, added, START + 120_000);
    expect(both.state.problemChanges.map((change) => change.change)).toEqual(['first', 'add']);
    expect(both.state.problemChanges.map((change) => Date.parse(change.heardAt))).toEqual([
      START + 60_000,
      START + 120_000,
    ]);
    expect(both.state.entries).toEqual([]);
    expect(both.events.at(-1)).toMatchObject({ kind: 'problems', payload: { by: BY_HAND, utterance: null } });
    expect(one.state.problemChanges).toHaveLength(1);
  });

  it('by voice keeps the words and the utterance', () => {
    const said = { heard: 'left wrist first', heardAt: '2026-05-03T14:03:00Z', utterance: 'field-2' };
    expect(problemsChanging(first, said)('field-3')).toEqual({
      kind: 'problems',
      payload: {
        change: { ...first, heardAt: said.heardAt },
        by: 'left wrist first',
        utterance: 'field-2',
      },
    });
  });

  it('comes out of the stored log as it went in', () => {
    const exam = changeProblems(begun(), added, START + 60_000);
    const stored: unknown[] = JSON.parse(JSON.stringify(exam.events));
    const read = stored
      .map(migrate)
      .flatMap((one): readonly RecordEvent[] => (one.kind === 'event' ? [one.event] : []));
    expect(fold(read)).toEqual(exam.state);
  });
});
