// The post's account of a device, whatever the order in which messages come.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Came, createAccount } from '../../src/link/index.ts';

const message = (seq: number, before = `h${seq - 1}`, hash = `h${seq}`): Came => ({
  kind: 'message',
  seq,
  before,
  hash,
});
const spoiled = (seq: number): Came => ({ kind: 'spoiled', seq, why: 'altered' });

describe('an account', () => {
  it('is whole in the end in whatever order the messages come, and however often', () => {
    const order = fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7, 8, 9], { minLength: 9 });
    fc.assert(
      fc.property(order, fc.array(fc.integer({ min: 1, max: 9 })), (first, again) => {
        const account = createAccount('h0');
        for (const seq of [...first, ...again]) account.take(message(seq));
        expect(account.standing()).toEqual({
          upTo: 9,
          hash: 'h9',
          beyond: [],
          missing: [],
          spoiled: [],
          broken: null,
        });
      }),
    );
  });

  it('names what is missing, and what is here beyond it', () => {
    const account = createAccount('h0');
    for (const seq of [1, 2, 5, 6, 9]) account.take(message(seq));
    expect(account.standing()).toMatchObject({
      upTo: 2,
      hash: 'h2',
      beyond: [
        [5, 6],
        [9, 9],
      ],
      missing: [
        [3, 4],
        [7, 8],
      ],
    });
    expect([1, 3, 5].map(account.admits)).toEqual([true, false, true]);
  });

  it('keeps what came first under a number', () => {
    const account = createAccount('h0');
    expect(account.take(message(1))).toBe('taken');
    expect(account.take(message(1))).toBe('again');
    expect(account.take(message(1, 'h0', 'other'))).toBe('contrary');
    expect(account.standing().hash).toBe('h1');
  });

  it('admits nothing from the first message on that does not follow the one before it', () => {
    const account = createAccount('h0');
    for (const came of [message(1), message(2), message(3, 'x2', 'x3'), message(4, 'x3', 'x4')])
      account.take(came);
    expect(account.standing()).toMatchObject({ upTo: 2, hash: 'h2', broken: { seq: 3 }, beyond: [] });
    expect([1, 2, 3, 4].map(account.admits)).toEqual([true, true, false, false]);
  });

  it('finds the break when the missing one comes last', () => {
    const account = createAccount('h0');
    for (const came of [message(1), message(3, 'x2', 'x3')]) account.take(came);
    expect(account.admits(3)).toBe(true);
    account.take(message(2));
    expect(account.standing()).toMatchObject({ upTo: 2, broken: { seq: 3 } });
    expect(account.admits(3)).toBe(false);
  });

  it('goes on over a spoiled message, of which the hash is not known', () => {
    const account = createAccount('h0');
    for (const came of [message(1), spoiled(2), message(3)]) account.take(came);
    expect(account.standing()).toMatchObject({ upTo: 3, hash: 'h3', broken: null, spoiled: [{ seq: 2 }] });
    expect(account.admits(2)).toBe(false);
  });
});
