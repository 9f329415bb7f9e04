// The chain of a log: what was altered, moved, put in or cut away is named with its place.

import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { beginChain, canonical, linkAfter, type Stored, verifyLog } from '../../../src/record/chain/index.ts';

const sha256 = async (text: string): Promise<string> => createHash('sha256').update(text).digest('hex');

async function chained(count: number): Promise<{ log: Stored[]; head: { count: number; hash: string } }> {
  const log: Stored[] = [];
  let hash = await beginChain('invented', sha256);
  for (let place = 1; place <= count; place += 1) {
    const event = { id: `test-${place}`, words: `invented line ${place}` };
    log.push({ place, kind: 'event', event, previous: hash });
    hash = await linkAfter(hash, event, sha256);
  }
  return { log, head: { count, hash } };
}

type End = { readonly count: number; readonly hash: string };
const judge = (log: readonly Stored[], head: End | null, witness: End | null = null) =>
  verifyLog('invented', log, head, sha256, witness);

describe('a log', () => {
  it('that is whole has no faults, and its end is where the next event goes', async () => {
    const { log, head } = await chained(5);
    const { hashes, ...verdict } = await judge(log, head);
    expect(verdict).toEqual({ faults: [], lastWhole: 5, end: head });
    expect([...hashes.keys()]).toEqual([1, 2, 3, 4, 5]);
    expect(hashes.get(5)).toBe(head.hash);
    expect((await judge([], { count: 0, hash: await beginChain('invented', sha256) })).faults).toEqual([]);
  });

  it('with an altered event names the one after it, whose hash no longer fits', async () => {
    const { log, head } = await chained(5);
    const altered = log.map((one) =>
      one.place === 2 ? { ...one, event: { id: 'test-2', words: 'other' } } : one,
    );
    const { faults, lastWhole } = await judge(altered, head);
    expect(faults).toEqual([{ fault: 'out-of-chain', place: 3 }]);
    expect(lastWhole).toBe(2);
  });

  it('put back whole to an earlier state of itself is whole in itself, and contradicts its witness', async () => {
    const [now, before] = [await chained(5), await chained(3)];
    expect((await judge(before.log, before.head)).faults).toEqual([]);
    expect((await judge(before.log, before.head, now.head)).faults).toEqual([
      { fault: 'put-back', place: 4, was: 5 },
    ]);
    expect((await judge(now.log, now.head, before.head)).faults).toEqual([]);
    const other = { count: 3, hash: now.head.hash };
    expect((await judge(now.log, now.head, other)).faults).toEqual([{ fault: 'put-back', place: 3, was: 3 }]);
  });

  it('with its last event altered does not end as the record says', async () => {
    const { log, head } = await chained(3);
    const altered = log.map((one) => (one.place === 3 ? { ...one, event: { id: 'test-3' } } : one));
    expect((await judge(altered, head)).faults).toEqual([{ fault: 'other-end', place: 3 }]);
  });

  it('with events missing in the middle says which, and where it goes on', async () => {
    const { log, head } = await chained(6);
    const { faults, lastWhole, end } = await judge(
      log.filter(({ place }) => place !== 3 && place !== 4),
      head,
    );
    expect(faults).toEqual([{ fault: 'missing', place: 3, count: 2 }]);
    expect([lastWhole, end]).toEqual([2, head]);
  });

  it('cut at its end is noticed by its head, and new events do not take the lost places', async () => {
    const { log, head } = await chained(6);
    const { faults, end } = await judge(log.slice(0, 4), head);
    expect(faults).toEqual([{ fault: 'missing', place: 5, count: 2 }]);
    expect(end.count).toBe(6);
  });

  it('with an unreadable event keeps those after it', async () => {
    const { log, head } = await chained(4);
    const broken = log.map(
      (one): Stored => (one.place === 2 ? { place: 2, kind: 'damaged', why: 'invented' } : one),
    );
    const { faults, end } = await judge(broken, head);
    expect(faults).toEqual([{ fault: 'damaged', place: 2, why: 'invented' }]);
    expect(end).toEqual(head);
  });

  it('of another record does not pass for this one', async () => {
    const { log, head } = await chained(2);
    expect((await verifyLog('other', log, head, sha256)).faults).toEqual([
      { fault: 'out-of-chain', place: 1 },
    ]);
  });

  it('without its head says that a cut would not show', async () => {
    const { log } = await chained(2);
    expect((await judge(log, null)).faults).toEqual([{ fault: 'no-head', place: 3 }]);
  });

  it('whose events were exchanged names both', async () => {
    const { log, head } = await chained(4);
    const [a, b, c, d] = log as [Stored, Stored, Stored, Stored];
    const { faults } = await judge([a, { ...c, place: 2 }, { ...b, place: 3 }, d], head);
    expect(faults.map(({ place }) => place)).toEqual([2, 3, 4]);
  });
});

describe('the canonical text', () => {
  // RFC 8785, section 3.2.2 (serialisation of primitives) and 3.2.3 (sorting); from memory.
  it('is that of the JSON Canonicalization Scheme', () => {
    expect(
      canonical(
        JSON.parse(
          String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
        ),
      ),
    ).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
    const names = { '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\ud83d\ude00': 5, '\u0080': 6, '\u00f6': 7 };
    expect([...canonical(names).matchAll(/:(\d)/g)].map(([, value]) => value).join('')).toBe('2467153');
  });

  it('does not depend on the order of members, and leaves out what has no value, as JSON does', () => {
    expect(canonical({ b: 1, a: { d: [undefined, 2], c: undefined } })).toBe('{"a":{"d":[null,2]},"b":1}');
    expect(canonical({ a: 1, b: 2 })).toBe(canonical({ b: 2, a: 1 }));
    expect(canonical(JSON.parse(JSON.stringify({ x: -0, y: 1e21 })))).toBe('{"x":0,"y":1e+21}');
  });
});
