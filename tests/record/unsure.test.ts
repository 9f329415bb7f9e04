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

describe('what a second reading of the same sound says otherwise', () => {
  const bundled = (text: string, ...alternatives: readonly string[]) => ({
    ...heard(text, []),
    engine: 'bundled',
    alternatives,
  });
  const doubtsOf = (...lines: readonly ReturnType<typeof heard>[]) =>
    entriesOf(...lines)
      .filter(({ kind }) => kind !== 'visit')
      .map(({ doubt = [] }) => doubt);

  it.each([
    ['left ankle is swollen', 'left temple is swollen'],
    ['left forearm swollen', 'right forearm swollen'],
    ['no numbness in the right hand', 'numbness in the right hand'],
    ['pulse is ninety two', 'pulse is ninety'],
    ['gave him aspirin', 'gave him some sugar'],
  ])('is asked about: %s (%s)', (text, other) => {
    expect(doubtsOf(bundled(text, other))).toEqual([[`heard in another way too: “${other}”`]]);
  });

  it('leaves no doubt where both say the same in other words, nor on what both say', () => {
    expect(doubtsOf(bundled('left forearm is swollen', 'left forearm swollen'))).toEqual([[]]);
    const both = doubtsOf(bundled('pulse is ninety two resps sixteen', 'pulse is ninety two resps sixty'));
    expect(both.filter((doubt) => doubt.length > 0)).toHaveLength(1);
  });

  it('strikes nothing that only one of them would', () => {
    const entries = entriesOf(heard('left forearm swollen', []), bundled('strike that', 'right thigh'));
    expect(entries[0]?.state).toBe('heard');
  });

  it('counts for the bundled ear alone: a browser lists readings down to unlikely ones', () => {
    const browser = { ...bundled('left ankle is swollen', 'left uncle is swollen'), engine: 'browser' };
    expect(doubtsOf(browser)).toEqual([[]]);
  });
});

describe('a dose said anew', () => {
  it('takes the place of the one that was wrong, so that it stands once', () => {
    const lines = ['gave her eight of ondansetron', 'no wait, four of ondansetron'];
    const given = entriesOf(...lines.map((line) => heard(line, []))).filter(({ kind }) => kind === 'care');
    expect(given.map(({ state }) => state)).toEqual(['replaced', 'heard']);
  });
});
