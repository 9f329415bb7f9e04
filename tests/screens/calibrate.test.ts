// The measurement beside the hearing: counted down, kept with the microphone and the day, given up where listening stops.

import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { calibrating } from '../../src/screens/listen/engine/calibrate.ts';
import type { Calibration } from '../../src/speech/index.ts';

const START = Date.UTC(2031, 3, 5, 12);

/** The browser's small storage, with what is kept in it. */
function storageOf(kept: Record<string, string> = {}): Storage {
  const all = new Map(Object.entries(kept));
  return {
    getItem: (key: string) => all.get(key) ?? null,
    setItem: (key: string, value: string) => void all.set(key, value),
    removeItem: (key: string) => void all.delete(key),
  } as unknown as Storage;
}

function arranged(storage: Storage | null = null, begun = START) {
  let time = begun;
  const shown = signal<Calibration>({ state: 'none' });
  const measuring = calibrating(shown, () => time, storage);
  /** lets seconds of sound come: quiet, then speech */
  const sound = (seconds: number) => {
    for (const end = time + seconds * 1000; time < end; time += 125) {
      const rms = time - begun < 2000 || Math.round(time / 125) % 3 === 0 ? 0.001 : 0.1;
      measuring.level({ from: time, to: time + 125, rms, peak: rms, clipped: 0 });
    }
  };
  return {
    measuring,
    shown,
    sound,
    later: (ms: number) => {
      time += ms;
    },
  };
}

describe('a measurement', () => {
  it('comes to its end by the sound alone, and is what advice is measured against', () => {
    const { measuring, shown, sound } = arranged();
    measuring.microphone('built in');
    expect(measuring.known()).toBeNull();
    measuring.begin();
    sound(1);
    expect(shown.value).toEqual({ state: 'still', left: 4 });
    sound(4.5);
    expect(shown.value.state).toBe('known');
    expect(measuring.known()?.voice).toBeCloseTo(-20, 1);
  });

  it('is forgotten with another microphone, not with the same one opened again', () => {
    const { measuring, shown, sound } = arranged();
    measuring.microphone('built in');
    measuring.begin();
    sound(5.5);
    measuring.microphone('built in');
    expect(shown.value.state).toBe('known');
    measuring.microphone('headset');
    expect(shown.value).toEqual({ state: 'none' });
    expect(measuring.known()).toBeNull();
  });

  it('is forgotten after half a day', () => {
    const { measuring, shown, sound, later } = arranged();
    measuring.begin();
    sound(5.5);
    later(13 * 3_600_000);
    expect(measuring.known()).toBeNull();
    expect(shown.value).toEqual({ state: 'none' });
  });

  it('that is not finished when listening stops is given up, and the one before stays', () => {
    const { measuring, shown, sound } = arranged();
    measuring.begin();
    sound(5.5);
    const before = shown.value;
    measuring.begin();
    sound(1);
    measuring.giveUp();
    expect(shown.value).toEqual(before);
  });
});

describe('after a reload', () => {
  /** What a page measured and kept at the start. */
  function measured(): Storage {
    const storage = storageOf();
    const { measuring, sound } = arranged(storage);
    measuring.begin();
    measuring.microphone('built in');
    sound(5.5);
    return storage;
  }
  const MINUTE = 60_000;

  it('the measurement is there again with its time, and advice is measured against it', () => {
    const { measuring, shown } = arranged(measured(), START + 20 * MINUTE);
    if (shown.value.state !== 'known') throw new Error(`it is ${shown.value.state}`);
    expect(Math.abs(shown.value.calibrated.at - START)).toBeLessThan(6000);
    expect(measuring.known()?.voice).toBeCloseTo(-20, 1);
    measuring.microphone('built in');
    expect(measuring.known()).not.toBeNull();
  });

  it.each([
    ['with another microphone', 'headset', START + MINUTE],
    ['on another day', 'built in', START + 13 * 60 * MINUTE],
    ['where the clock was set back', 'built in', START - 60 * MINUTE],
  ])('it is forgotten %s, and stays so', (_, microphone, at) => {
    const storage = measured();
    const { measuring } = arranged(storage, at);
    measuring.microphone(microphone);
    expect(measuring.known()).toBeNull();
    expect(arranged(storage, at).measuring.known()).toBeNull();
  });

  it.each(['', '{', 'null', '[]', '{"noise":"loud","voice":-20,"at":1,"microphone":""}'])(
    'what is kept as %j is no measurement',
    (kept) => {
      const { shown } = arranged(storageOf({ 'fieldsay-calibration': kept }));
      expect(shown.value).toEqual({ state: 'none' });
    },
  );
});
