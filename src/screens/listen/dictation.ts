// Dictation through the browser: off until a person turns it on, on the device itself where the browser can, and when it
// stops it says why.

import { type Signal, signal } from '@preact/signals';
import {
  installOnDevice,
  type OnDevice,
  onDevice,
  type RecognitionMaker,
  recognitionIn,
} from '../../speech/browser/index.ts';
import { type EarNow, type Gap, type HeardWords, keepRecognising } from '../../speech/supervisor/index.ts';

/** `none`: this browser has no recognition of its own. */
export type DictationState = EarNow | { readonly state: 'none' };

export interface Dictation {
  readonly now: Signal<DictationState>;
  /** words that are not settled yet, to be shown and never recorded */
  readonly hearing: Signal<string>;
  /** whether the sound stays on this device; null until it is known */
  readonly local: Signal<OnDevice | null>;
  /** finds out whether the sound would stay on this device */
  look(): Promise<void>;
  /** asks the browser to fetch what it needs to recognise on this device */
  install(): Promise<void>;
  turnOn(): Promise<void>;
  turnOff(): void;
  deaf(from: number, to: number | null): void;
}

export interface DictationNews {
  heard(words: HeardWords): void;
  gap(gap: Gap): void;
}

/** How often it is looked after, ms. */
const CHECK = 250;
const ALTERNATIVES = 3;

/** The dictation of the browser whose global scope is given. */
export function createDictation(
  scope: { readonly navigator: Pick<Navigator, 'language' | 'userAgent'> },
  { heard, gap }: DictationNews,
): Dictation {
  const maker = recognitionIn(scope);
  const { language, userAgent } = scope.navigator;
  const now = signal<DictationState>(maker === null ? { state: 'none' } : { state: 'off' });
  const hearing = signal('');
  const local = signal<OnDevice | null>(null);
  let timer: ReturnType<typeof setInterval> | null = null;

  const make = (made: RecognitionMaker) => {
    const one = new made();
    one.lang = language;
    one.continuous = true;
    one.interimResults = true;
    one.maxAlternatives = ALTERNATIVES;
    if (local.peek() === 'available') one.processLocally = true;
    return one;
  };

  const recogniser =
    maker === null
      ? null
      : keepRecognising({
          make: () => make(maker),
          clock: () => Date.now(),
          grows: /Android/.test(userAgent),
          unsettled: (text) => {
            hearing.value = text;
          },
          heard,
          gap,
          now: (state) => {
            now.value = state;
            if (state.state !== 'off' && state.state !== 'stopped') return;
            if (timer !== null) clearInterval(timer);
            timer = null;
          },
        });

  const look = async (): Promise<void> => {
    if (maker !== null) local.value = await onDevice(maker, language);
  };

  return {
    now,
    hearing,
    local,
    look,
    install: async () => {
      if (maker === null) return;
      await installOnDevice(maker, language);
      await look();
    },
    turnOn: async () => {
      if (recogniser === null) return;
      await look();
      timer ??= setInterval(recogniser.check, CHECK);
      recogniser.start();
    },
    turnOff: () => recogniser?.stop(),
    deaf: (_from, to) => recogniser?.deaf(to === null),
  };
}
