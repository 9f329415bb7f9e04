// Two logs of one record: what only the other has comes in once, nothing is overwritten, and a contradiction is counted.

import { describe, expect, it } from 'vitest';
import { fold, mergeLogs } from '../../src/record/index.ts';
import { finding, hearAll, note, pulse } from './fake-reader.ts';

const log = () => hearAll({ swelling: [finding()], pulse: [pulse(92)], hm: [note('hm')] }).events;

describe('a merge', () => {
  it('into an empty log is the other log', () => {
    expect(mergeLogs([], log())).toEqual({ events: log(), added: log().length, contrary: [] });
  });

  it('with itself adds nothing', () => {
    expect(mergeLogs(log(), log())).toEqual({ events: log(), added: 0, contrary: [] });
  });

  it('brings what was lacking, whichever part it was, and the record then has every entry once', () => {
    for (let cut = 0; cut < log().length; cut += 1) {
      const mine = log().filter((_, index) => index !== cut);
      const { events, added } = mergeLogs(mine, log());
      expect(added).toBe(1);
      const ids = fold(events).entries.map(({ id }) => id);
      expect([...ids].sort()).toEqual(
        fold(log())
          .entries.map(({ id }) => id)
          .sort(),
      );
    }
  });

  it('keeps what stands here where the other says otherwise, and names it', () => {
    const [first, ...rest] = log();
    if (first === undefined) throw new Error('an empty log');
    const altered = [{ ...first, time: '2001-01-01T00:00:00Z' }, ...rest];
    const merged = mergeLogs(log(), altered);
    expect(merged.events).toEqual(log());
    expect(merged.contrary).toEqual([first.id]);
  });

  it('takes the order of an event’s members for no difference', () => {
    const turned = log().map((event) => Object.fromEntries(Object.entries(event).reverse()) as typeof event);
    expect(mergeLogs(log(), turned).contrary).toEqual([]);
  });
});
