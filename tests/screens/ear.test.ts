// Dictation says what it settles on once, keeps what was never settled, and gives its reason when it stops.

import { describe, expect, it, vi } from 'vitest';
import { createDictation, type HeardWords } from '../../src/screens/listen/dictation.ts';
import { type Recognition, type RecognitionMaker, recognitionIn } from '../../src/screens/listen/speech.ts';
import { stopReason } from '../../src/screens/listen/stop-reason.ts';

const result = (transcript: string, isFinal: boolean) =>
  Object.assign([{ transcript, confidence: 0.9 }], { isFinal });

function fakeMaker(): { maker: RecognitionMaker; made: Recognition[] } {
  const made: Recognition[] = [];
  class Fake {
    constructor() {
      made.push(this as unknown as Recognition);
    }
    start() {}
    stop() {}
    abort() {}
  }
  return { maker: Fake as unknown as RecognitionMaker, made };
}

async function listening() {
  const { maker, made } = fakeMaker();
  const heard: HeardWords[] = [];
  const ear = createDictation(maker, 'en-GB', (words) => heard.push(words));
  await ear.turnOn();
  const hear = (...results: readonly ReturnType<typeof result>[]) =>
    made.at(-1)?.onresult?.({ resultIndex: 0, results });
  return { ear, made, heard, hear };
}

describe('the ear', () => {
  it('is not there where the browser has no recogniser', () => {
    expect(createDictation(recognitionIn({}), 'en', () => undefined).now.value).toEqual({ state: 'none' });
  });

  it('is off until it is turned on', async () => {
    const { maker, made } = fakeMaker();
    const ear = createDictation(maker, 'en', () => undefined);
    expect(ear.now.value.state).toBe('off');
    expect(made).toHaveLength(0);
    await ear.turnOn();
    expect(ear.now.value).toEqual({ state: 'listening', onDevice: false });
  });

  it('takes a settled result once, however often the browser gives it again', async () => {
    const { heard, hear } = await listening();
    hear(result('left knee', false));
    hear(result('left knee swelling', true));
    hear(result('left knee swelling', true), result('no', false));
    expect(heard.map(({ text }) => text)).toEqual(['left knee swelling']);
  });

  it('keeps words that were shown and never settled when it is turned off', async () => {
    const { ear, heard, hear } = await listening();
    hear(result('right ankle swelling', false));
    ear.turnOff();
    expect(heard.map(({ text }) => text)).toEqual(['right ankle swelling']);
    expect(ear.now.value.state).toBe('off');
  });

  it('stops for a refused microphone and says so', async () => {
    const { ear, made } = await listening();
    made.at(-1)?.onerror?.({ error: 'not-allowed' });
    expect(ear.now.value).toEqual({ state: 'stopped', why: stopReason('not-allowed') });
  });

  it('goes on after a silence', async () => {
    vi.useFakeTimers();
    const { ear, made } = await listening();
    made.at(-1)?.onerror?.({ error: 'no-speech' });
    made.at(-1)?.onend?.();
    vi.advanceTimersByTime(1000);
    expect(ear.now.value.state).toBe('listening');
    expect(made).toHaveLength(2);
    vi.useRealTimers();
  });

  it('keeps the sound on the device where the browser says that it can', async () => {
    const { maker, made } = fakeMaker();
    Object.assign(maker.prototype, { processLocally: false });
    Object.assign(maker, { available: () => Promise.resolve('available') });
    const ear = createDictation(maker, 'en-GB', () => undefined);
    await ear.turnOn();
    expect(made.at(-1)?.processLocally).toBe(true);
    expect(ear.now.value).toEqual({ state: 'listening', onDevice: true });
  });
});
