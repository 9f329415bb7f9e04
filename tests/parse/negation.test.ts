// Holds negation to its promises: what a no reaches over, what ends it, and what only looks like a no. All talk here is
// invented.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  NEGATION_KINDS,
  type NegationKind,
  type NegationMark,
  negatedSpans,
  possibleSpans,
} from '../../src/parse/negation.ts';
import { marksIn, TRIGGERS, wordsIn } from './negation-marks.ts';

/** The talk with the words that are reached over in brackets, marks themselves outside. */
function bracketed(talk: string, spansOf: typeof negatedSpans): string {
  const { words, breaks } = wordsIn(talk);
  const spans = spansOf(marksIn(words, breaks), words.length);
  return words
    .map((word, at) => {
      const opens = spans.some(({ start }) => start === at) ? '[' : '';
      const closes = spans.some(({ end }) => end === at + 1) ? ']' : '';
      return `${opens}${word}${closes}`;
    })
    .join(' ');
}

const plain = (row: string): string => row.replace(/[[\]]/g, '');

describe('a negation reaches over', () => {
  it.each([
    'no [swelling]',
    'no [deformity swelling or tenderness]',
    'no [pain on the left or the right]',
    'denies any [pain in his neck]',
    'denies [numbness]',
    'without [swelling or bruising]',
    'i do not see any [blood in the ear]',
    'do not see any [bruising]',
    'not seeing any [bleeding]',
    'i am not finding [anything on the skull]',
    'can not feel any [crepitus]',
    'i can not see a [wound there]',
    'negative for [crepitus]',
    'the pelvis is free of [pain]',
    'nothing in the way of [bruising]',
    'never had a [fit] but faints',
    'he does not have any [tingling]',
    'she is not complaining of [nausea]',
    'patient does not report any [pain]',
    'he has not got any [pain]',
    'they were not having [pain]',
    'patient denies any [pain]',
    'the knee is not [tender or swollen]',
    'no sign of a [fracture]',
    'no longer [bleeding]',
    'neither [numbness] nor [tingling]',
    'nil [deformity]',
    'i have not felt any [grating]',
    'did not find any [wounds]',
    'absence of [crepitus]',
    '[crepitus] is absent',
    '[crepitus] absent',
    '[swelling] none',
    '[babinski] is negative',
    '[deformity and swelling of the left forearm] are absent',
    '[bruising] none that i can see',
    '[any tenderness] not present',
    '[loss of consciousness] was denied',
  ])('%s', (row) => {
    expect(bracketed(plain(row), negatedSpans)).toBe(row);
  });

  it.each([
    ["I can't see any bruising", 'i can not see any [bruising]'],
    ["he doesn't have any numbness", 'he does not have any [numbness]'],
    ["it isn't tender", 'it is not [tender]'],
    ["I'm not seeing any swelling", 'i am not seeing any [swelling]'],
  ])('contractions too: %s', (talk, expected) => {
    expect(bracketed(talk, negatedSpans)).toBe(expected);
  });
});

describe('a negation ends at', () => {
  it.each([
    'no [deformity] but swelling',
    'no [injuries] except a cut on the chin',
    'no [wounds] apart from the shin',
    'no [wounds] other than this scrape',
    'no [deformity] there is swelling on the outside',
    'no [crepitus] however he winces',
    'no [swelling] a small bruise on the shin',
    'no [deformity] some bruising',
    'no [deformity] just bruising',
    'no [deformity] i can feel grating',
    'no [deformity and] she has pain',
    'no [numbness] which surprises me',
    'denies [tingling] complains of pain',
    'no [pain] no [swelling] no [bruising]',
    'no [tenderness] moving on to the left arm bruising here',
    'deformity here but [crepitus] is absent',
    'no [tenderness] possible fracture',
  ])('%s', (row) => {
    expect(bracketed(plain(row), negatedSpans)).toBe(row);
  });

  it('the end of a sentence, whatever comes after', () => {
    expect(bracketed('No swelling. Bruising over the shin.', negatedSpans)).toBe(
      'no [swelling] bruising over the shin',
    );
    expect(bracketed('Swelling here. Crepitus absent.', negatedSpans)).toBe(
      'swelling here [crepitus] absent',
    );
  });

  it('eight words before it, when it reaches back', () => {
    const row = 'swelling over the whole of the outer left ankle pain absent';
    expect(bracketed(row, negatedSpans)).toBe(
      'swelling over [the whole of the outer left ankle pain] absent',
    );
  });
});

describe('it is no negation', () => {
  it.each([
    'not only bruised but swollen',
    'no doubt this is broken',
    'no change in the swelling',
    'no worries tell me about the pain',
    'do not move your neck',
    'try not to move the leg',
    'does it hurt or not',
    'swelling and tenderness of the left wrist',
    'i know this hurts',
    'a notch in the bone',
    'not sure about the pelvis',
    'possible rib fracture',
    'a fracture can not be ruled out',
    'have not checked the back for wounds',
    'unable to assess sensation',
    'the left leg was not examined for swelling',
    'rule out a spinal injury',
    'i do not know if there is bleeding',
    'feeling for deformity',
  ])('%s', (row) => {
    expect(bracketed(row, negatedSpans)).toBe(row);
  });
});

describe('it is left open, neither there nor not', () => {
  it.each([
    'possible [rib fracture]',
    'rule out [spinal injury]',
    'have not checked [the back for wounds]',
    'not yet examined [the back]',
    'unable to assess [sensation]',
    'not sure about [the pelvis]',
    'could be [broken] but no deformity',
    '[fracture] can not be ruled out',
    'a [fracture] is unlikely',
    'looking for [bleeding]',
  ])('%s', (row) => {
    expect(bracketed(plain(row), possibleSpans)).toBe(row);
  });

  it.each(['no rib fracture', 'no doubt about the ribs', 'swelling of the ankle', 'crepitus is absent'])(
    'unlike in: %s',
    (row) => {
      expect(bracketed(row, possibleSpans)).toBe(row);
    },
  );
});

describe('the trigger phrases', () => {
  it('have each one meaning, in plain lower-case words', () => {
    const kinds = new Map<string, Set<NegationKind>>();
    for (const { phrase, kind } of TRIGGERS) kinds.set(phrase, (kinds.get(phrase) ?? new Set()).add(kind));
    expect([...kinds].filter(([, meanings]) => meanings.size > 1)).toEqual([]);
    expect(TRIGGERS.filter(({ phrase }) => !/^[a-z]+(?: [a-z]+)*$/.test(phrase))).toEqual([]);
    expect(new Set(TRIGGERS.map(({ kind }) => kind))).toEqual(new Set(NEGATION_KINDS));
  });
});

describe('spans', () => {
  const mark = (kind: NegationKind, start: number, end: number): NegationMark => ({ kind, start, end });

  it('name the mark that reaches over them', () => {
    const no = mark('before', 1, 2);
    expect(negatedSpans([no], 4)).toEqual([{ start: 2, end: 4, by: no }]);
    const absent = mark('after', 2, 4);
    expect(negatedSpans([absent], 4)).toEqual([{ start: 0, end: 2, by: absent }]);
  });

  it('are none where a mark has nothing to reach', () => {
    expect(negatedSpans([mark('before', 1, 2)], 2)).toEqual([]);
    expect(negatedSpans([mark('after', 0, 1)], 3)).toEqual([]);
    expect(negatedSpans([], 3)).toEqual([]);
  });

  it('take the longer of two marks that begin together, and an empty stop between two words', () => {
    const notOnly = [mark('before', 0, 1), mark('pseudo', 0, 2)];
    expect(negatedSpans(notOnly, 4)).toEqual([]);
    expect(negatedSpans([mark('before', 0, 1), mark('stop', 2, 2)], 4)).toMatchObject([{ start: 1, end: 2 }]);
  });

  const anyMark = fc
    .record({ start: fc.nat(20), size: fc.nat(3), kind: fc.constantFrom(...NEGATION_KINDS) })
    .map(({ start, size, kind }) => mark(kind, start, start + size));

  it('lie inside the utterance, beside their mark, and do not depend on the order of the marks', () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyMark, { selector: ({ start }) => start }), (marks) => {
        for (const spansOf of [negatedSpans, possibleSpans]) {
          const spans = spansOf(marks, 24);
          expect(spansOf(marks.toReversed(), 24)).toEqual(spans);
          for (const { start, end, by } of spans) {
            expect(0 <= start && start < end && end <= 24).toBe(true);
            expect(start === by.end || end === by.start).toBe(true);
          }
        }
      }),
    );
  });

  it('never hold a word of a mark that counts', () => {
    const apart = fc.array(
      fc.record({
        gap: fc.nat(3),
        size: fc.integer({ min: 1, max: 3 }),
        kind: fc.constantFrom(...NEGATION_KINDS),
      }),
    );
    fc.assert(
      fc.property(apart, (rows) => {
        let at = 0;
        const marks = rows.map(({ gap, size, kind }) => {
          const start = at + gap;
          at = start + size;
          return mark(kind, start, at);
        });
        for (const span of [...negatedSpans(marks, at + 2), ...possibleSpans(marks, at + 2)])
          expect(marks.filter(({ start, end }) => start < span.end && span.start < end)).toEqual([]);
      }),
    );
  });
});
