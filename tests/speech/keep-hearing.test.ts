// Sound that stops coming is noticed, said, tried again, and named as a gap with its times. The microphone is a fake.

import { describe, expect, it } from 'vitest';
import { keepHearing, type SourceNews } from '../../src/speech/supervisor/keep-hearing.ts';
import type { EarNow, Gap } from '../../src/speech/supervisor/now.ts';

const START = 1_000_000;

type Opening = 'open' | 'busy' | 'forbidden';

/** A keeper with a clock that a test moves, and a microphone that opens as the test says. */
function arranged() {
  let time = START;
  let opening: Opening = 'open';
  const said: EarNow[] = [];
  const gaps: Gap[] = [];
  const opened: SourceNews[] = [];
  const done = { closed: 0, woken: 0 };
  const keeper = keepHearing({
    clock: () => time,
    now: (state) => said.push(state),
    gap: (gap) => gaps.push(gap),
    open: async (news) => {
      if (opening === 'busy') return { kind: 'refused', why: 'busy', passing: true };
      if (opening === 'forbidden') return { kind: 'refused', why: 'forbidden', passing: false };
      opened.push(news);
      return {
        kind: 'open',
        wake: () => {
          done.woken += 1;
        },
        close: () => {
          done.closed += 1;
        },
      };
    },
  });
  const settle = () => new Promise<void>((resolve) => setImmediate(resolve));
  /** lets time pass as the page does: looked after twice a second; with sound where `peak` is given */
  const pass = async (ms: number, peak: number | null): Promise<void> => {
    for (const end = time + ms; time < end; ) {
      time += 100;
      if (peak !== null) keeper.sound({ from: time - 100, to: time, peak });
      if (time % 500 === 0) keeper.check();
      await settle();
    }
  };
  const start = async (): Promise<void> => {
    keeper.start();
    await settle();
  };
  return {
    keeper,
    said,
    gaps,
    opened,
    done,
    pass,
    start,
    settle,
    state: () => said.at(-1),
    at: () => time,
    becomes: (next: Opening) => {
      opening = next;
    },
  };
}

const LOUD = 0.2;

describe('an ear that hears', () => {
  it('is getting ready until the first sound, then hears, and is off when it is stopped', async () => {
    const { keeper, said, gaps, done, pass, start } = arranged();
    await start();
    await pass(1000, LOUD);
    keeper.stop();
    expect(said.map(({ state }) => state)).toEqual(['starting', 'hearing', 'off']);
    expect(gaps).toEqual([]);
    expect(done.closed).toBe(1);
  });

  it('takes a person’s time to allow the microphone for no gap', async () => {
    const { gaps, pass, start } = arranged();
    await start();
    await pass(8000, null);
    await pass(1000, LOUD);
    expect(gaps).toEqual([]);
  });

  it('takes a quiet room for sound', async () => {
    const { gaps, pass, start, state } = arranged();
    await start();
    await pass(60_000, 0.0001);
    expect(state()).toEqual({ state: 'hearing' });
    expect(gaps).toEqual([]);
  });
});

describe('a microphone that falls silent', () => {
  it('is said within three seconds, woken, and the gap is named when sound comes again', async () => {
    const { gaps, pass, start, state, at, done, settle } = arranged();
    await start();
    await pass(1000, LOUD);
    const from = at();
    await pass(3000, null);
    expect(state()).toEqual({ state: 'deaf', why: 'no sound came from the microphone', since: from });
    expect(done.woken).toBeGreaterThan(0);
    await pass(200, LOUD);
    await settle();
    expect(state()).toEqual({ state: 'hearing' });
    expect(gaps).toEqual([{ from, to: from + 3000, why: 'no sound came from the microphone' }]);
  });

  it('is opened anew when it stays silent', async () => {
    const { pass, start, opened, done } = arranged();
    await start();
    await pass(1000, LOUD);
    await pass(9000, null);
    expect(opened.length).toBeGreaterThan(1);
    expect(done.closed).toBe(opened.length - 1);
  });

  it('is named as hidden where the page was hidden', async () => {
    const { keeper, gaps, pass, start } = arranged();
    await start();
    await pass(1000, LOUD);
    keeper.hidden(true);
    await pass(1500, null);
    keeper.hidden(false);
    await pass(200, LOUD);
    expect(gaps.map(({ why }) => why)).toEqual(['the page was hidden']);
  });

  it('gives no gap for a page that was hidden and went on hearing', async () => {
    const { keeper, gaps, pass, start } = arranged();
    await start();
    keeper.hidden(true);
    await pass(5000, LOUD);
    keeper.hidden(false);
    await pass(1000, LOUD);
    expect(gaps).toEqual([]);
  });

  it('that gives nothing but zeros is found out, and the gap begins with the first of them', async () => {
    const { gaps, pass, start, state, at } = arranged();
    await start();
    await pass(1000, LOUD);
    const from = at();
    await pass(12_000, 0);
    expect(state()).toMatchObject({ state: 'deaf', since: from });
    await pass(300, LOUD);
    expect(gaps).toMatchObject([{ from, to: from + 12_000 }]);
  });

  it('is a gap up to the moment that listening is stopped', async () => {
    const { keeper, gaps, pass, start, at, state } = arranged();
    await start();
    await pass(1000, LOUD);
    await pass(4000, null);
    keeper.stop();
    expect(gaps).toMatchObject([{ from: at() - 4000, to: at() }]);
    expect(state()).toEqual({ state: 'off' });
  });
});

describe('another app that takes the microphone', () => {
  it('is said, and what comes meanwhile counts as no sound', async () => {
    const { opened, gaps, pass, start, state, at } = arranged();
    await start();
    await pass(1000, LOUD);
    const from = at();
    opened[0]?.muted(true);
    await pass(6000, 0);
    expect(state()).toMatchObject({ state: 'deaf', why: 'another app or the device took the microphone' });
    expect(opened).toHaveLength(1);
    opened[0]?.muted(false);
    await pass(300, LOUD);
    expect(gaps).toEqual([{ from, to: from + 6000, why: 'another app or the device took the microphone' }]);
  });
});

describe('a microphone that is gone', () => {
  it('is opened again as soon as it can be, and the gap is named', async () => {
    const { opened, gaps, pass, start, becomes, state } = arranged();
    await start();
    await pass(1000, LOUD);
    becomes('busy');
    opened[0]?.lost('the microphone was unplugged');
    await pass(5000, null);
    expect(state()).toMatchObject({ state: 'deaf' });
    becomes('open');
    await pass(10_000, null);
    expect(opened.length).toBeGreaterThan(1);
    await pass(300, LOUD);
    expect(gaps).toMatchObject([{ why: 'the microphone was unplugged' }]);
  });

  it('changes nothing by news that come late', async () => {
    const { opened, pass, start, state, keeper } = arranged();
    await start();
    keeper.stop();
    await start();
    await pass(500, LOUD);
    opened[0]?.lost('the microphone was unplugged');
    opened[0]?.muted(true);
    await pass(500, LOUD);
    expect(state()).toEqual({ state: 'hearing' });
  });
});

describe('a microphone that is forbidden', () => {
  it('stops listening with the reason, and is not asked for again by itself', async () => {
    const { becomes, start, state, pass, opened } = arranged();
    becomes('forbidden');
    await start();
    expect(state()).toEqual({ state: 'stopped', why: 'forbidden' });
    becomes('open');
    await pass(20_000, null);
    expect(opened).toEqual([]);
  });
});
