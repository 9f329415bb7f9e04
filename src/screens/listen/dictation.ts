// Dictation through the browser: off until a person turns it on, and when it stops it says why.

import { type Signal, signal } from '@preact/signals';
import { type HeardEvent, type Recognition, type RecognitionMaker, worksOnDevice } from './speech.ts';
import { stopReason } from './stop-reason.ts';

export type DictationState =
  | { readonly state: 'none' }
  | { readonly state: 'off' }
  | { readonly state: 'listening'; readonly onDevice: boolean }
  | { readonly state: 'stopped'; readonly why: string };

export interface Dictation {
  readonly now: Signal<DictationState>;
  /** words that are not settled yet, to be shown and never recorded */
  readonly hearing: Signal<string>;
  turnOn(): Promise<void>;
  turnOff(): void;
}

export interface HeardWords {
  readonly text: string;
  readonly confidence: number;
  readonly alternatives: readonly string[];
}

/** Ends in a row with nothing heard after which listening is given up; a browser that ends at once would loop. */
const TRIES = 20;

/** Dictation; `maker` is null where the browser has no recogniser. `heard` is called for settled words only. */
export function createDictation(
  maker: RecognitionMaker | null,
  lang: string,
  heard: (words: HeardWords) => void,
): Dictation {
  const now = signal<DictationState>(maker === null ? { state: 'none' } : { state: 'off' });
  const hearing = signal('');
  let recognition: Recognition | null = null;
  let wanted = false;
  let idle = 0;
  let taken = 0;

  const stop = (state: DictationState): void => {
    wanted = false;
    recognition?.abort();
    recognition = null;
    hearing.value = '';
    now.value = state;
  };

  const onResult = ({ resultIndex, results }: HeardEvent): void => {
    idle = 0;
    let unsettled = '';
    for (let index = resultIndex; index < results.length; index += 1) {
      const result = results[index];
      const best = result?.[0];
      if (result === undefined || best === undefined) continue;
      if (!result.isFinal) unsettled += best.transcript;
      // Android gives settled results again: each place is taken once.
      else if (index >= taken) {
        taken = index + 1;
        const others = Array.from(result, ({ transcript }) => transcript.trim()).slice(1);
        const text = best.transcript.trim();
        if (text !== '') heard({ text, confidence: best.confidence, alternatives: others });
      }
    }
    hearing.value = unsettled.trim();
  };

  const listen = (made: RecognitionMaker, onDevice: boolean): void => {
    const one = new made();
    one.lang = lang;
    one.continuous = true;
    one.interimResults = true;
    one.maxAlternatives = 3;
    if (onDevice) one.processLocally = true;
    taken = 0;
    one.onresult = onResult;
    one.onerror = ({ error }) => {
      const why = stopReason(error);
      if (why !== null && recognition === one) stop({ state: 'stopped', why });
    };
    // Browsers end a session after some silence of their own accord; a person who turned it on is still talking.
    one.onend = () => {
      if (!wanted || recognition !== one) return;
      keepUnsettled();
      idle += 1;
      if (idle > TRIES) stop({ state: 'stopped', why: 'Nothing was heard for a while.' });
      else setTimeout(() => wanted && recognition === one && listen(made, onDevice), 250);
    };
    recognition = one;
    try {
      one.start();
      now.value = { state: 'listening', onDevice };
    } catch {
      stop({ state: 'stopped', why: 'The browser did not start listening.' });
    }
  };

  // Words that the browser showed and never settled are still words that were said.
  const keepUnsettled = (): void => {
    const text = hearing.value;
    hearing.value = '';
    if (text !== '') heard({ text, confidence: 0, alternatives: [] });
  };

  return {
    now,
    hearing,
    turnOn: async () => {
      if (maker === null || wanted) return;
      wanted = true;
      idle = 0;
      const onDevice = await worksOnDevice(maker, lang);
      if (wanted) listen(maker, onDevice);
    },
    turnOff: () => {
      if (maker === null) return;
      keepUnsettled();
      stop({ state: 'off' });
    },
  };
}
