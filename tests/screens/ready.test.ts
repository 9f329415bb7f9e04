// Ready for the mountain: every check tells its real state, and what is not so says how it is mended.

import { signal } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { checksOf, type Facts } from '../../src/screens/ready/checks.ts';
import { keepAwake } from '../../src/screens/ready/wake.ts';

const READY: Facts = {
  installed: true,
  offline: true,
  model: true,
  persistent: true,
  microphone: 'granted',
  wake: 'on',
  voice: 'local',
  installable: false,
  battery: { percent: 96, charging: false },
};

describe('the checks', () => {
  it('are all met where everything is so', () => {
    const checks = checksOf(READY);
    expect(checks).toHaveLength(8);
    expect(checks.filter(({ state, mend }) => state !== 'yes' || mend !== null)).toEqual([]);
  });

  it.each<[keyof Facts, Partial<Facts>, string]>([
    ['installed', { installed: false }, 'no'],
    ['offline', { offline: false }, 'no'],
    ['model', { model: false }, 'no'],
    ['model', { model: null }, 'unknown'],
    ['persistent', { persistent: false }, 'no'],
    ['microphone', { microphone: 'denied' }, 'no'],
    ['microphone', { microphone: 'prompt' }, 'no'],
    ['microphone', { microphone: null }, 'unknown'],
    ['wake', { wake: 'none' }, 'no'],
    ['wake', { wake: 'refused' }, 'no'],
    ['wake', { wake: 'off' }, 'unknown'],
    ['voice', { voice: 'not-local' }, 'no'],
    ['battery', { battery: { percent: 41, charging: false } }, 'no'],
    ['battery', { battery: null }, 'unknown'],
  ])('with %s not so, one is not met and says what to do', (_name, change, state) => {
    const open = checksOf({ ...READY, ...change }).filter((one) => one.state !== 'yes');
    expect(open).toHaveLength(1);
    expect(open[0]?.state).toBe(state);
    expect(open[0]?.mend).toBeTruthy();
  });
});

describe('a check that is not met', () => {
  it.each<[Partial<Facts>, string | null]>([
    [{ installed: false, installable: true }, 'install'],
    [{ installed: false, installable: false }, null],
    [{ model: false }, 'hearing'],
    [{ persistent: false }, 'persist'],
    [{ microphone: 'prompt' }, 'microphone'],
    // Once it was refused the browser asks no more: only its settings help.
    [{ microphone: 'denied' }, null],
  ])('with %j is mended by %s', (change, by) => {
    const [open] = checksOf({ ...READY, ...change }).filter(({ state }) => state !== 'yes');
    expect(open?.by).toBe(by);
  });

  it('of a battery is none while it is being charged', () => {
    const checks = checksOf({ ...READY, battery: { percent: 41, charging: true } });
    expect(checks.filter(({ state }) => state !== 'yes')).toEqual([]);
  });
});

describe('the screen', () => {
  afterEach(() => vi.unstubAllGlobals());

  const page = () => Object.assign(new EventTarget(), { visibilityState: 'visible' }) as unknown as Document;
  const settled = () => new Promise((done) => setTimeout(done));

  it('is kept awake while it is wanted, and let go after', async () => {
    let released = 0;
    const lock = Object.assign(new EventTarget(), {
      released: false,
      release: async () => {
        released += 1;
      },
    });
    vi.stubGlobal('navigator', { wakeLock: { request: async () => lock } });
    const wanted = signal(true);
    const wake = keepAwake(wanted, page());
    await settled();
    expect(wake.value).toBe('on');
    wanted.value = false;
    await settled();
    expect([wake.value, released]).toEqual(['off', 1]);
  });

  it('that the device lets go dark is told as such', async () => {
    vi.stubGlobal('navigator', {
      wakeLock: { request: () => Promise.reject(new Error('low battery')) },
    });
    const wake = keepAwake(signal(true), page());
    await settled();
    expect(wake.value).toBe('refused');
  });

  it('that cannot be kept awake is told as such', () => {
    vi.stubGlobal('navigator', {});
    expect(keepAwake(signal(true), page()).value).toBe('none');
  });
});
