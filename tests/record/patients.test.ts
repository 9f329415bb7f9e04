// Which patient's record a spoken turn means.

import { describe, expect, it } from 'vitest';
import { beginExam, hearUtterance, turnIn, turnTo } from '../../src/record/index.ts';
import { realReader } from '../talk-case.ts';

const START = Date.parse('2026-05-03T14:00:00Z');

describe('a turn to another patient', () => {
  it.each([
    ['a number with a record', { known: [1, 2], current: 1 }, 2, { kind: 'open', patient: 2 }],
    ['a number without one', { known: [1], current: 1 }, 2, { kind: 'begin', patient: 2 }],
    ['a number far on', { known: [1, 2], current: 1 }, 5, { kind: 'begin', patient: 5 }],
    ['the one in hand', { known: [1, 2], current: 2 }, 2, { kind: 'open', patient: 2 }],
    ['the next of two', { known: [1, 2], current: 1 }, 'next', { kind: 'open', patient: 2 }],
    ['the next after a gap', { known: [1, 5], current: 1 }, 'next', { kind: 'open', patient: 5 }],
    ['the next after the last', { known: [1, 2], current: 2 }, 'next', { kind: 'begin', patient: 3 }],
    ['a new one', { known: [1, 2], current: 1 }, 'new', { kind: 'begin', patient: 3 }],
    ['the previous one', { known: [1, 2, 3], current: 3 }, 'previous', { kind: 'open', patient: 2 }],
    [
      'the one that was open before',
      { known: [1, 2, 3], current: 2, before: 3 },
      'previous',
      { kind: 'open', patient: 3 },
    ],
    [
      'a previous one where there is none',
      { known: [1], current: 1 },
      'previous',
      { kind: 'no-such-patient', why: 'There is no patient before this one.' },
    ],
  ] as const)('to %s', (_, patients, meant, turn) => expect(turnTo(patients, meant)).toEqual(turn));

  it('stands in the log with what was said after it, and makes no entry of that but a doubtful note', () => {
    const reader = realReader();
    const begun = beginExam(reader, { device: 'field', startedAt: START, zone: 'UTC' });
    const heard = hearUtterance(begun, reader, {
      text: 'switching to patient two, pulse ninety',
      heardAt: START + 1000,
      zone: 'UTC',
    });
    expect(heard.events.flatMap((event) => turnIn(event) ?? [])).toEqual([
      { meant: 2, rest: 'pulse ninety' },
    ]);
    expect(heard.state.entries).toMatchObject([{ kind: 'note', doubt: [expect.any(String)] }]);
  });

  it.each([
    ['patient eleven', 11],
    ['go to patient 14', 14],
    ['switch to casualty number twenty', 20],
    ['back to patient twenty one', 21],
    ['patient twenty nine', 29],
  ])('is heard in %j, which is beyond ten', (text, meant) => {
    const reader = realReader();
    const begun = beginExam(reader, { device: 'field', startedAt: START, zone: 'UTC' });
    const heard = hearUtterance(begun, reader, { text, heardAt: START + 1000, zone: 'UTC' });
    expect(heard.events.flatMap((event) => turnIn(event) ?? [])).toEqual([{ meant, rest: null }]);
  });

  it('is not made of a number that no turn is known for', () => {
    const reader = realReader();
    const begun = beginExam(reader, { device: 'field', startedAt: START, zone: 'UTC' });
    const heard = hearUtterance(begun, reader, {
      text: 'go to patient thirty one',
      heardAt: START + 1000,
      zone: 'UTC',
    });
    expect(heard.events.flatMap((event) => turnIn(event) ?? [])).toEqual([]);
    expect(heard.state.entries).toMatchObject([{ kind: 'note', text: 'go to patient thirty one' }]);
  });

  it('is in no event but its own', () => {
    const reader = realReader();
    const begun = beginExam(reader, { device: 'field', startedAt: START, zone: 'UTC' });
    const heard = hearUtterance(begun, reader, {
      text: 'patient two has a broken ankle. read back.',
      heardAt: START + 1000,
      zone: 'UTC',
    });
    expect(heard.events.flatMap((event) => turnIn(event) ?? [])).toEqual([]);
  });
});
