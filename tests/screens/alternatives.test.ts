// Of several ways in which a browser heard one breath, the one that makes sense is taken, and what they dispute is in doubt.

import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { Desk } from '../../src/screens/desk/index.ts';
import { bestOf } from '../../src/screens/listen/alternatives.ts';
import { realReader } from '../talk-case.ts';

const DESK = {
  record: signal(null),
  reader: signal(realReader()),
  clock: () => Date.UTC(2026, 4, 3, 20, 2),
  zone: '-06:00',
} as unknown as Desk;

const best = (text: string, ...alternatives: readonly string[]) => bestOf(DESK, { text, alternatives });

describe('words offered by a browser', () => {
  it('are taken as they are, and without doubt, where nothing else was offered or all mean the same', () => {
    expect(best('left ankle is swollen')).toMatchObject({ text: 'left ankle is swollen', doubt: [] });
    expect(best('pulse 92', 'pulse ninety two')).toMatchObject({ text: 'pulse 92', doubt: [] });
  });

  it.each([
    ['left ankle is swollen', 'right ankle is swollen'],
    ['no deformity of the left wrist', 'deformity of the left wrist'],
    ['the pelvis is stable', 'the pelvis is unstable'],
    ['pulse is 50', 'pulse is 15'],
    ['blood pressure 130 over 80', 'blood pressure 113 over 80'],
  ])('are in doubt where another way says another side, polarity or number: %s / %s', (text, other) => {
    const { doubt } = best(text, other);
    expect(doubt).toHaveLength(1);
    expect(doubt[0]).toMatch(/^heard in another way too: “/);
  });

  it('are in doubt where not the first of them was taken', () => {
    expect(best('lift wrist is swelling', 'left wrist is swollen')).toMatchObject({
      text: 'left wrist is swollen',
      alternatives: ['lift wrist is swelling'],
      doubt: ['heard in another way too: “lift wrist is swelling”'],
    });
  });
});
