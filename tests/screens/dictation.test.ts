// The browser's dictation as the page uses it: on the device where that was agreed to, told of the words of the trade, and
// going on without them where they are refused. The browser is a fake; no real one stands behind it.

import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { createDictation } from '../../src/screens/listen/dictation.ts';
import type { HeardEvent, Recognition } from '../../src/speech/browser/index.ts';
import type { HeardWords } from '../../src/speech/supervisor/index.ts';
import { event } from '../speech/fake-recognition.ts';

beforeAll(() => {
  vi.useFakeTimers();
});
afterEach(() => vi.clearAllTimers());
// Files of one worker share its clock: the next one would wait for ever.
afterAll(() => {
  vi.useRealTimers();
});

interface Offered {
  /** what the browser answers when it is asked whether it can on the device, in their order; the last stays */
  readonly answers?: readonly string[];
  readonly takesPhrases?: boolean;
}

function arranged({ answers = ['unavailable'], takesPhrases = true }: Offered = {}) {
  const made: Recognition[] = [];
  const heard: HeardWords[] = [];
  let asked = 0;
  class SpeechRecognition {
    static available = async () => answers[Math.min(asked++, answers.length - 1)] ?? '';
    static install = async () => true;
    declare phrases?: readonly object[];
    onstart: (() => void) | null = null;
    onresult: ((event: HeardEvent) => void) | null = null;
    onerror: ((event: { readonly error: string }) => void) | null = null;
    onend: (() => void) | null = null;
    constructor() {
      made.push(this as unknown as Recognition);
    }
    start() {
      this.onstart?.();
    }
    stop() {}
    abort() {}
  }
  const offered = takesPhrases ? ['processLocally', 'phrases'] : ['processLocally'];
  for (const name of offered)
    Object.defineProperty(SpeechRecognition.prototype, name, { value: undefined, writable: true });
  class SpeechRecognitionPhrase {
    readonly phrase: string;
    readonly boost: number;
    constructor(phrase: string, boost: number) {
      [this.phrase, this.boost] = [phrase, boost];
    }
  }
  const navigator = { language: 'en-US', userAgent: 'invented' };
  const likely = vi.fn(async () => [{ phrase: 'crepitus', boost: 4 }]);
  const dictation = createDictation({ navigator, SpeechRecognition, SpeechRecognitionPhrase } as never, {
    likely,
    heard: (words) => heard.push(words),
    gap: () => undefined,
  });
  return { dictation, made, heard, likely };
}

describe('dictation', () => {
  it('tells the browser of the words of the trade, and goes on without them where they are refused', async () => {
    const { dictation, made } = arranged();
    await dictation.turnOn();
    expect(made[0]?.phrases).toEqual([{ phrase: 'crepitus', boost: 4 }]);
    made[0]?.onerror?.({ error: 'phrases-not-supported' });
    made[0]?.onend?.();
    await vi.advanceTimersByTimeAsync(1000);
    expect(made).toHaveLength(2);
    expect(made[1]?.phrases).toBeUndefined();
    expect(dictation.now.value).toEqual({ state: 'hearing' });
  });

  it('asks for no words where the browser takes none', async () => {
    const { dictation, made, likely } = arranged({ takesPhrases: false });
    await dictation.turnOn();
    expect(likely).not.toHaveBeenCalled();
    expect(made[0]?.phrases).toBeUndefined();
  });

  it('hears all the same where the words could not be fetched', async () => {
    const { dictation, likely } = arranged();
    likely.mockRejectedValue(new Error('no network'));
    await dictation.turnOn();
    expect(dictation.now.value).toEqual({ state: 'hearing' });
  });

  it('recognises on the device wherever the browser can', async () => {
    const { dictation, made } = arranged({ answers: ['available'] });
    await dictation.look();
    await dictation.turnOn();
    expect(made[0]?.processLocally).toBe(true);
  });

  it('sends nothing away where the device was agreed to and can no longer', async () => {
    const { dictation, made } = arranged({ answers: ['available', 'downloadable'] });
    await dictation.look();
    await dictation.turnOn();
    expect(made).toHaveLength(0);
    expect(dictation.now.value).toMatchObject({ state: 'stopped' });
  });

  it('stays on the device when a session is begun again, whatever the browser says meanwhile', async () => {
    const { dictation, made } = arranged({ answers: ['available', 'available', 'unavailable'] });
    await dictation.look();
    await dictation.turnOn();
    await dictation.look();
    made[0]?.onend?.();
    await vi.advanceTimersByTimeAsync(1000);
    expect(made[1]?.processLocally).toBe(true);
  });

  it('brings what was heard with its alternatives', async () => {
    const { dictation, made, heard } = arranged();
    await dictation.turnOn();
    made[0]?.onresult?.(event([['left rest swollen', true, 'left wrist swollen']]));
    expect(heard[0]).toMatchObject({ text: 'left rest swollen', alternatives: ['left wrist swollen'] });
  });
});
