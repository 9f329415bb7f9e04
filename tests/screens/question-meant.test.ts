// Which question a word answers: the one read aloud last, or the only one that can be seen; never one of several. Invented.

import { describe, expect, it } from 'vitest';
import type { Conflict } from '../../src/clinical/index.ts';
import { reckon } from '../../src/clinical/index.ts';
import { createSettled, nameOf } from '../../src/screens/entries/settled.ts';
import {
  questionAfter,
  questionAloud,
  questionMeant,
  severalAloud,
} from '../../src/screens/voice/question-meant.ts';
import { entry, swelling } from './made-up.ts';

const NOW = Date.parse('2031-04-05T10:05:00+02:00');
const knee = { ...swelling, site: 'knee', side: 'right' } as const;
const ENTRIES = [
  entry(swelling),
  entry({ ...swelling, present: false }),
  entry(knee),
  entry({ ...knee, present: false }),
];
const OPEN: readonly Conflict[] = reckon(ENTRIES, { now: NOW }).conflicts;
const [ARM, KNEE] = OPEN;
if (ARM === undefined || KNEE === undefined) throw new Error('the invented entries are not at odds');

describe('a word to a question', () => {
  it.each([
    ['none where none is open', [], null, true, 'none'],
    ['the only one where it can be seen', [ARM], null, true, 'one'],
    ['none before it was read, where it cannot be seen', [ARM], null, false, 'unseen'],
    ['the only one where it was read', [ARM], nameOf(ARM), false, 'one'],
    ['none of several, whether they can be seen or not', [ARM, KNEE], null, true, 'several'],
    ['none of those left where the one that was read is open no more', [ARM], nameOf(KNEE), false, 'unseen'],
  ] as const)('answers %s', (_, open, read, isOnScreen, kind) => {
    expect(questionMeant(open, read, isOnScreen).kind).toBe(kind);
  });

  it('answers the one of several that was read last', () => {
    expect(questionMeant(OPEN, nameOf(KNEE), true)).toEqual({ kind: 'one', question: KNEE });
  });

  it('names all of them where it could mean any', () => {
    expect(severalAloud(OPEN)).toMatch(
      /^Nothing was settled: 2 questions are open\. One: left forearm.* Two: right knee/,
    );
  });
});

describe('a question that is read aloud', () => {
  it('is the next one, and after the last the first', () => {
    expect(questionAfter(OPEN, null)).toBe(ARM);
    expect(questionAfter(OPEN, nameOf(ARM))).toBe(KNEE);
    expect(questionAfter(OPEN, nameOf(KNEE))).toBe(ARM);
    expect(questionAfter([], null)).toBeNull();
  });

  it('has each entry with its side and its yes or no, and the words that answer it', () => {
    expect(questionAloud(KNEE, ENTRIES)).toMatch(
      /Changed, or misheard\? One: right knee, swelling\. Two: right knee, swelling: no\. If both hold, say “settle the question”; else “the first was misheard” or “the second was misheard”\.$/,
    );
  });
});

describe('what was settled', () => {
  it('is asked again, the last first, and answers no word by itself', () => {
    const settled = createSettled();
    settled.readAloud.value = nameOf(ARM);
    settled.settle(ARM);
    settled.settle(KNEE);
    expect(settled.readAloud.value).toBeNull();
    expect(settled.askAgain()).toBe(true);
    expect([ARM, KNEE].map(settled.isSettled)).toEqual([true, false]);
    expect(settled.askAgain()).toBe(true);
    expect(settled.askAgain()).toBe(false);
    expect(settled.isSettled(ARM)).toBe(false);
  });
});
