// What the ear was unsure of is asked about: doubts on entries, and nothing struck or confirmed on a guess. Words invented.

import { describe, expect, it } from 'vitest';
import { beginExam, hearUtterance, type WordHeard } from '../../src/record/index.ts';
import { realReader } from '../talk-case.ts';

const START = Date.UTC(2026, 4, 3, 20, 2, 0);
const zone = '-06:00';
const reader = realReader();

const heard = (text: string, unsure: readonly string[], doubt: readonly string[] = []) => ({
  text,
  doubt,
  words: text.split(' ').map((word): WordHeard => ({ word, confidence: unsure.includes(word) ? 0.2 : 0.9 })),
});

function entriesOf(...lines: readonly ReturnType<typeof heard>[]) {
  const begun = beginExam(reader, { device: 'test', startedAt: START, zone });
  return lines.reduce(
    (exam, line, index) => hearUtterance(exam, reader, { ...line, heardAt: START + 4000 * index, zone }),
    begun,
  ).state.entries;
}

describe('an unsure word', () => {
  it.each([
    ['left forearm swollen', 'left', 'heard unsurely: side “left”'],
    ['left forearm no swelling', 'no', 'heard unsurely: present “no”'],
    ['pulse is ninety two', 'ninety', 'heard unsurely: value “ninety”'],
  ])('in “%s” (%s) leaves a doubt on the entry', (text, word, doubt) => {
    const [entry] = entriesOf(heard(text, [word])).filter(({ kind }) => kind !== 'visit');
    expect(entry?.doubt).toContain(doubt);
  });

  it('that changes nothing leaves none', () => {
    expect(entriesOf(heard('the left forearm is swollen', ['the', 'is']))[0]?.doubt).toBeUndefined();
  });

  it('leaves none on what was said beside it', () => {
    const entries = entriesOf(heard('left forearm swollen pulse is ninety two', ['ninety']));
    expect(entries.find(({ kind }) => kind === 'finding')?.doubt).toBeUndefined();
    expect(entries.find(({ kind }) => kind === 'vital')?.doubt).toBeDefined();
  });

  it.each(['strike that', 'confirm'])('in “%s” does nothing to the record but keep the words', (command) => {
    const entries = entriesOf(heard('left forearm swollen', []), heard(command, command.split(' ')));
    expect(entries[0]?.state).toBe('heard');
    expect(entries.at(-1)).toMatchObject({ kind: 'note', text: command });
  });
});

describe('an utterance in doubt', () => {
  it('leaves its doubt on every entry', () => {
    const entries = entriesOf(heard('no swelling or deformity of the left knee', [], ['heard in part']));
    expect(entries.map(({ doubt }) => doubt)).toEqual([['heard in part'], ['heard in part']]);
  });
});
