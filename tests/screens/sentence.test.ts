// An entry reads as a sentence with its side in front and its negative in plain sight.

import { describe, expect, it } from 'vitest';
import { originMarks } from '../../src/screens/entries/origin.ts';
import { sentenceOf, sentenceText } from '../../src/screens/entries/sentence.ts';
import type { Statement } from '../../src/terms/index.ts';
import { entry, swelling } from './made-up.ts';

describe('a sentence', () => {
  it.each<[Statement, string]>([
    [
      {
        kind: 'finding',
        site: 'forearm',
        side: 'right',
        finding: 'laceration',
        present: true,
        size: { value: 3, unit: 'cm' },
      },
      'RIGHT forearm: laceration 3 cm',
    ],
    [{ ...swelling, finding: 'bleeding', present: false }, 'LEFT forearm: bleeding: NO'],
    [{ ...swelling, side: null }, 'SIDE NOT SAID forearm: swelling'],
    [{ ...swelling, side: 'both' }, 'BOTH forearms: swelling'],
    [{ ...swelling, site: 'abdomen', side: null }, 'Abdomen: swelling'],
    [{ ...swelling, site: 'abdomen', side: 'left' }, 'LEFT abdomen: swelling'],
    [
      {
        kind: 'finding',
        site: 'cervical-spine',
        side: null,
        finding: 'tenderness',
        present: true,
        level: 'C5',
      },
      'Cervical spine, C5: tenderness',
    ],
    [
      { kind: 'csm', site: 'hand', side: 'left', aspect: 'circulation', present: true },
      'LEFT hand: circulation: INTACT',
    ],
    [
      { kind: 'csm', site: 'foot', side: 'right', aspect: 'motion', present: false },
      'RIGHT foot: motion: NOT INTACT',
    ],
    [
      { kind: 'csm', site: 'hand', side: 'left', aspect: 'motion', present: false, digit: 'thumb' },
      'LEFT hand: motion (thumb only): NOT INTACT',
    ],
    [
      { kind: 'vital', vital: 'blood-pressure', value: { systolic: 120, diastolic: 80 } },
      'Blood pressure 120/80',
    ],
    [{ kind: 'history', topic: 'allergies', text: 'penicillin' }, 'Allergies: penicillin'],
    [{ kind: 'history', topic: 'allergies', text: 'allergies', present: false }, 'Allergies: allergies: NO'],
    [{ kind: 'care', care: 'splint', site: 'wrist', side: null }, 'SIDE NOT SAID wrist: Splint'],
    [{ kind: 'visit', site: 'knee', side: 'left' }, 'LEFT knee: looked at or felt, no more said'],
    [{ kind: 'note', text: 'odd words' }, 'Kept as said: “odd words”'],
  ])('of %j', (statement, text) => {
    expect(sentenceText(statement)).toBe(text);
  });

  it('never gives an absent finding without its answer', () => {
    expect(sentenceOf({ ...swelling, present: false }).answer).toBe('NO');
    expect(sentenceOf(swelling).answer).toBeNull();
  });
});

describe('what was not spoken', () => {
  it('is named slot by slot', () => {
    expect(originMarks(entry(swelling, { known: { side: 'carried', present: 'inferred' } }))).toEqual([
      'side carried over',
      'yes or no worked out',
    ]);
  });

  it('is empty where all was spoken', () => {
    expect(originMarks(entry(swelling))).toEqual([]);
  });
});
