// Whatever is said in whatever order: nothing is lost, and the log alone rebuilds the record. The talk is random.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change, CorrectionTarget } from '../../src/parse/frame.ts';
import { beginExam, type Exam, fold, hearUtterance, migrate } from '../../src/record/index.ts';
import type { Statement } from '../../src/terms/index.ts';
import { fakeReader, START, ZONE } from './fake-reader.ts';

const side = fc.constantFrom('left', 'right', 'both', null);
const statement: fc.Arbitrary<Statement> = fc.oneof(
  fc.record({
    kind: fc.constant('finding' as const),
    site: fc.constantFrom('wrist' as const, 'knee' as const, 'sternum' as const),
    side,
    finding: fc.constantFrom('swelling' as const, 'pain' as const),
    present: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('vital' as const),
    vital: fc.constantFrom('pulse' as const, 'respirations' as const),
    value: fc.record({ rate: fc.integer({ min: 0, max: 120 }) }),
  }),
  fc.record({
    kind: fc.constant('csm' as const),
    site: fc.constantFrom('hand' as const, 'foot' as const),
    side,
    aspect: fc.constantFrom('motion' as const, 'sensation' as const),
    present: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('visit' as const),
    site: fc.constantFrom('wrist' as const, 'knee' as const),
    side,
  }),
  fc.record({ kind: fc.constant('note' as const), text: fc.constantFrom('mumble', 'hm') }),
);
const change: fc.Arbitrary<Change> = fc.oneof(
  fc.constant({ change: 'strike' as const }),
  fc.record({
    change: fc.constant('side' as const),
    side: fc.constantFrom('left' as const, 'right' as const),
  }),
  fc.record({
    change: fc.constant('site' as const),
    site: fc.constantFrom('wrist' as const, 'sternum' as const),
  }),
  fc.record({ change: fc.constant('present' as const), present: fc.boolean() }),
  fc.record({
    change: fc.constant('finding' as const),
    finding: fc.constantFrom('burn' as const, 'pain' as const),
  }),
  fc.record({ change: fc.constant('number' as const), value: fc.integer({ min: 0, max: 2000 }) }),
  fc.record({ change: fc.constant('statement' as const), statement }),
);
const target: fc.Arbitrary<CorrectionTarget> = fc.constantFrom(
  {},
  { site: 'wrist' },
  { finding: 'pain', side: 'left' },
  { vital: 'pulse' },
);
const draft = fc.oneof(
  { weight: 3, arbitrary: fc.record({ statement, group: fc.integer({ min: 0, max: 1 }) }) },
  { weight: 2, arbitrary: fc.record({ change, target }) },
  { weight: 1, arbitrary: fc.constant({ command: 'confirm' as const }) },
);
const talk = fc.array(fc.array(draft, { maxLength: 3 }), { maxLength: 12 });

type Drafts = Parameters<typeof fakeReader>[0][string];

function heard(utterances: readonly Drafts[]): Exam<number> {
  const script = Object.fromEntries(utterances.map((drafts, index) => [`line ${index}`, drafts]));
  const reader = fakeReader(script);
  return Object.keys(script).reduce(
    (exam, text, index) => hearUtterance(exam, reader, { text, heardAt: START + index * 1000, zone: ZONE }),
    beginExam(reader, { device: 'test', startedAt: START, zone: ZONE }),
  );
}

const holds = (check: (exam: Exam<number>, said: readonly Drafts[]) => void): void =>
  fc.assert(
    fc.property(talk, (said) => check(heard(said), said)),
    { numRuns: 300 },
  );

describe('any talk', () => {
  it('leaves every utterance in the log and in the state, in order', () => {
    holds((exam, said) => {
      const wanted = said.map((_drafts, index) => `line ${index}`);
      expect(exam.state.utterances.map(({ text }) => text)).toEqual(wanted);
    });
  });

  it('gives each statement an entry that is never removed, and each correction a trace', () => {
    holds((exam, said) => {
      const statements = said.flat().filter((one) => 'statement' in one).length;
      const corrections = said.flat().filter((one) => 'change' in one).length;
      const traces = exam.events.filter(
        ({ kind }) => kind === 'corrected' || kind === 'struck' || kind === 'unmatched-correction',
      ).length;
      const anew = exam.state.entries.filter(({ doubt }) =>
        doubt?.includes('nothing earlier fits this correction'),
      );
      expect(exam.state.entries.length).toBeGreaterThanOrEqual(statements);
      expect(traces + anew.length).toBeGreaterThanOrEqual(corrections);
    });
  });

  it('is rebuilt from its log', () => {
    holds((exam) => {
      const stored = JSON.parse(JSON.stringify(exam.events)).map((event: unknown) => {
        const read = migrate(event);
        if (read.kind === 'refused') throw new Error(read.why);
        return read.event;
      });
      expect(fold(stored)).toEqual(exam.state);
    });
  });

  it('gives each entry its own id and each replaced one a later entry in its place', () => {
    holds(({ state: { entries, groups } }) => {
      const ids = entries.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(groups.flatMap((group) => group.entries).toSorted()).toEqual(ids.toSorted());
      for (const [index, entry] of entries.entries()) {
        if (entry.state !== 'replaced') continue;
        expect(entries.findIndex(({ id }) => id === entry.replacedBy)).toBeGreaterThan(index);
      }
    });
  });

  it('never has a pulse or breathing outside its limits', () => {
    holds(({ state }) => {
      const rates = state.entries.flatMap((entry) =>
        entry.kind === 'vital' && 'rate' in entry.value ? [entry.value.rate ?? 0] : [],
      );
      expect(rates.filter((rate) => rate > 300)).toEqual([]);
    });
  });
});
