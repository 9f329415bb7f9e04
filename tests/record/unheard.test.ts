// Stretches in which nothing could be heard: in the log and the state, and nothing is carried past them.

import { describe, expect, it } from 'vitest';
import { beginExam, fold, hearUtterance, keepingRefusals, logUnheard } from '../../src/record/index.ts';
import { notUnderstood } from '../../src/speech/index.ts';

const START = Date.parse('2026-05-03T14:02:00-06:00');
const ZONE = '-06:00';

/** A reader that counts in its context how much it has read. */
const counting = {
  begin: () => 0,
  read: (_utterance: unknown, context: number) => ({ frames: [], context: context + 1 }),
};

const begun = () => beginExam(counting, { device: 'test', startedAt: START, zone: ZONE });

describe('a stretch in which nothing could be heard', () => {
  const stretch = { from: START + 10_000, to: START + 50_000, why: 'the page was hidden' };
  const exam = logUnheard(
    hearUtterance(begun(), counting, { text: 'left arm', heardAt: START, zone: ZONE }),
    counting.begin(),
    stretch,
  );

  it('is an event with its times in the zone of the record', () => {
    expect(exam.events.at(-1)).toMatchObject({
      kind: 'unheard',
      time: '2026-05-03T14:02:50-06:00',
      payload: {
        from: '2026-05-03T14:02:10-06:00',
        to: '2026-05-03T14:02:50-06:00',
        why: 'the page was hidden',
      },
    });
  });

  it('is in the state that the log folds to', () => {
    expect(fold(exam.events)).toEqual(exam.state);
    expect(exam.state.unheard).toHaveLength(1);
  });

  it('lets nothing that was in mind pass', () => {
    expect(exam.context).toBe(0);
  });
});

describe('speech that was not understood', () => {
  const reader = keepingRefusals(counting);
  const said = (text: string) => reader.read({ text, heardAt: START, zone: ZONE }, 5);

  it('is a note of its own, past which nothing is carried', () => {
    const text = notUnderstood(12, 15);
    const { frames, context } = said(text);
    expect(frames).toMatchObject([{ frame: 'statement', statement: { kind: 'note', text } }]);
    expect(context).toBe(0);
  });

  it('is never taken from ordinary words', () => {
    expect(said('not understood').context).toBe(6);
  });
});
