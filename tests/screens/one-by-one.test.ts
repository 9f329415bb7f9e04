// Only entries in which nothing easily misheard can hide may be confirmed several at a time.

import { describe, expect, it } from 'vitest';
import { aloneBecause } from '../../src/record/index.ts';
import { groupEntries } from '../../src/screens/entries/by-region.ts';
import { mayGoTogether } from '../../src/screens/entries/one-by-one.ts';
import type { Statement } from '../../src/terms/index.ts';
import { entry, swelling } from './made-up.ts';

const csm: Statement = { kind: 'csm', site: 'hand', side: 'left', aspect: 'motion', present: true };

describe('an entry goes with others', () => {
  it.each<[string, Statement]>([
    ['a present finding of the midline', { ...swelling, site: 'sternum', side: null }],
    ['one that was said of both sides', { ...swelling, side: 'both' }],
    ['intact motion of both hands', { ...csm, side: 'both' }],
    ['skin', { kind: 'vital', vital: 'skin', value: { color: 'pink' } }],
    ['a pelvic binder', { kind: 'care', care: 'pelvic-binder', site: 'pelvis' }],
    ['a mechanism in plain words', { kind: 'history', topic: 'mechanism', text: 'slipped on wet rock' }],
    ['a visit', { kind: 'visit', site: 'neck', side: null }],
  ])('%s', (_name, statement) => {
    expect(aloneBecause(entry(statement))).toBeNull();
  });
});

describe('an entry is confirmed alone', () => {
  it.each<[string, Statement, string]>([
    ['a side', swelling, 'a side'],
    ['a side of what has none of its own', { ...swelling, site: 'chest' }, 'a side'],
    ['intact motion of one hand', csm, 'a side'],
    ['a splint with its side', { kind: 'care', care: 'splint', site: 'wrist', side: 'left' }, 'a side'],
    ['a visit of one side', { kind: 'visit', site: 'knee', side: 'left' }, 'a side'],
    ['a side not said', { ...swelling, side: null }, 'side not said'],
    ['care whose side was not said', { kind: 'care', care: 'splint', site: 'wrist' }, 'side not said'],
    ['a negative', { ...swelling, present: false }, 'a negative'],
    ['lost motion', { ...csm, present: false }, 'a negative'],
    ['a size', { ...swelling, size: { value: 3, unit: 'cm' } }, 'a number'],
    ['a vertebra', { ...swelling, site: 'cervical-spine', side: null, level: 'C5' }, 'a number'],
    ['a pulse', { kind: 'vital', vital: 'pulse', value: { rate: 92 } }, 'a number'],
    ['pupils', { kind: 'vital', vital: 'pupils', value: { equal: false } }, 'a number'],
    ['an age', { kind: 'history', topic: 'age', text: '41', years: 41 }, 'a number'],
    [
      'allergies',
      { kind: 'history', topic: 'allergies', text: 'penicillin' },
      'allergies, drugs and the like',
    ],
    [
      'medications',
      { kind: 'history', topic: 'medications', text: 'aspirin' },
      'allergies, drugs and the like',
    ],
    ['a drug given', { kind: 'care', care: 'medication', text: 'paracetamol' }, 'drugs and amounts'],
    ['oxygen with its flow', { kind: 'care', care: 'oxygen', text: 'four litres' }, 'drugs and amounts'],
    [
      'a number in words',
      { kind: 'history', topic: 'mechanism', text: 'fell eight metres' },
      'a number or a “no” in the words',
    ],
    [
      'a denial in a note',
      { kind: 'note', text: 'he was not wearing it' },
      'a number or a “no” in the words',
    ],
  ])('%s', (_name, statement, why) => {
    expect(aloneBecause(entry(statement))).toBe(why);
  });

  it('with a slot that was carried, an open question, or a spoken time', () => {
    expect(aloneBecause(entry(swelling, { known: { site: 'carried' } }))).toBe('not all of it was spoken');
    expect(aloneBecause(entry(swelling, { doubt: ['which?'] }))).toBe('a question is open');
    expect(aloneBecause(entry(swelling, { at: '2031-04-05T09:50:00+02:00' }))).toBe('a spoken time');
  });

  it('once it is confirmed or struck it goes with none', () => {
    const sternum: Statement = { ...swelling, site: 'sternum', side: null };
    expect(mayGoTogether(entry(sternum))).toBe(true);
    expect(mayGoTogether(entry(sternum, { state: 'confirmed' }))).toBe(false);
    expect(mayGoTogether(entry(sternum, { state: 'struck' }))).toBe(false);
  });
});

describe('entries by region', () => {
  const entries = [
    entry({ kind: 'note', text: 'odd words' }),
    entry({ kind: 'visit', site: 'knee', side: 'left' }),
    entry({ ...swelling, site: 'knee' }),
    entry({ ...swelling, site: 'skull', side: null }),
    entry({ ...swelling, site: 'knee' }, { state: 'replaced' }),
    entry({ kind: 'csm', site: 'foot', side: 'left', aspect: 'motion', present: true }),
  ];
  const groups = groupEntries(entries);

  it('stand in exam order, with what has no region after them', () => {
    expect(groups.map(({ title }) => title)).toEqual(['Head', 'Leg', 'Kept as said']);
  });

  it('lose none', () => {
    const shown = groups.flatMap(({ standing, fallen }) => [...standing, ...fallen]);
    expect(new Set(shown.map(({ id }) => id))).toEqual(new Set(entries.map(({ id }) => id)));
    expect(shown).toHaveLength(entries.length);
  });

  it('keep replaced ones apart and put mere visits last', () => {
    const leg = groups.find(({ id }) => id === 'leg');
    expect(leg?.standing.map(({ kind }) => kind)).toEqual(['finding', 'csm', 'visit']);
    expect(leg?.fallen).toHaveLength(1);
    expect(leg?.open).toBe(3);
  });
});
