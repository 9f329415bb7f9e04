// The second place that remembers how far a log had come.

import { describe, expect, it } from 'vitest';
import { createWitness, type WitnessStorage } from '../../../src/record/store/index.ts';

function storageWith(kept: Map<string, string> = new Map()): WitnessStorage {
  return {
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, value) => void kept.set(name, value),
    removeItem: (name) => void kept.delete(name),
    key: (index) => [...kept.keys()][index] ?? null,
    get length() {
      return kept.size;
    },
  };
}

const hash = (digit: string): string => digit.repeat(64);

describe('the witness', () => {
  it('knows the furthest end of each log, and forgets one that was removed', () => {
    const witness = createWitness(storageWith(new Map([['fieldsay-look', 'night']])));
    expect(witness.of('r1')).toBeNull();
    witness.note('r1', { count: 7, hash: hash('a') });
    witness.note('r1', { count: 5, hash: hash('b') });
    witness.note('r2', { count: 1, hash: hash('c') });
    expect(witness.of('r1')).toEqual({ count: 7, hash: hash('a') });
    expect(witness.records().toSorted()).toEqual(['r1', 'r2']);
    witness.forget('r1');
    expect(witness.records()).toEqual(['r2']);
  });

  it.each(['', 'nonsense', '7', `7 ${hash('z')}`, `-1 ${hash('a')}`])(
    'takes %j for no word at all',
    (text) => {
      expect(createWitness(storageWith(new Map([['fieldsay-end-r1', text]]))).of('r1')).toBeNull();
    },
  );

  it('without a storage, or with one that refuses, knows nothing and breaks nothing', () => {
    const refuses = {
      ...storageWith(),
      setItem: () => expect.fail('full'),
      getItem: () => expect.fail('no'),
    };
    for (const storage of [null, refuses]) {
      const witness = createWitness(storage);
      witness.note('r1', { count: 1, hash: hash('a') });
      expect(witness.of('r1')).toBeNull();
      expect(witness.records()).toEqual([]);
    }
  });
});
