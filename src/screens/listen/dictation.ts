// Dictation through the browser: off until a person turns it on, on the device itself where the browser can, and when it
// stops it says why.

import { type Signal, signal } from '@preact/signals';
import {
  installOnDevice,
  type LikelyPhrase,
  type OnDevice,
  onDevice,
  phrasesIn,
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

export interface DictationParts {
  /** the words of the trade, for browsers that can be told of them; asked for only when dictation is turned on */
  likely(): Promise<readonly LikelyPhrase[]>;
  heard(words: HeardWords): void;
  gap(gap: Gap): void;
}

/** How often it is looked after, ms. */
const CHECK = 250;
const ALTERNATIVES = 3;
const NO_LONGER_LOCAL =
  'The browser no longer recognises on this device, and nothing was sent to its maker. Look under “Set up”.';

/** The dictation of the browser whose global scope is given. */
export function createDictation(
  scope: { readonly navigator: Pick<Navigator, 'language' | 'userAgent'> },
  { likely, heard, gap }: DictationParts,
): Dictation {
  const maker = recognitionIn(scope);
  const { language, userAgent } = scope.navigator;
  const now = signal<DictationState>(maker === null ? { state: 'none' } : { state: 'off' });
  const hearing = signal('');
  const local = signal<OnDevice | null>(null);
  let timer: ReturnType<typeof setInterval> | null = null;
  /** fixed when it is turned on: what a person agreed to is not changed under them */
  let isLocal = false;
  let phrases: readonly object[] = [];

  const make = (made: RecognitionMaker) => {
    const one = new made();
    if (phrases.length > 0) one.phrases = phrases;
    one.lang = language;
    one.continuous = true;
    one.interimResults = true;
    one.maxAlternatives = ALTERNATIVES;
    if (isLocal) one.processLocally = true;
    return one;
  };

  const recogniser =
    maker === null
      ? null
      : keepRecognising({
          make: () => make(maker),
          clock: () => Date.now(),
          phrasesRefused: () => {
            phrases = [];
          },
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

  /** Its words of the trade as the browser wants them; without them it hears all the same. */
  const findPhrases = async (made: RecognitionMaker): Promise<readonly object[]> => {
    const Phrase = phrasesIn(scope, made);
    if (Phrase === null) return [];
    try {
      return (await likely()).map(({ phrase, boost }) => new Phrase(phrase, boost));
    } catch {
      return [];
    }
  };

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
      if (recogniser === null || maker === null) return;
      const agreed = local.peek();
      await look();
      isLocal = local.peek() === 'available';
      if (agreed === 'available' && !isLocal) {
        now.value = { state: 'stopped', why: NO_LONGER_LOCAL };
        return;
      }
      phrases = await findPhrases(maker);
      timer ??= setInterval(recogniser.check, CHECK);
      recogniser.start();
    },
    turnOff: () => recogniser?.stop(),
    deaf: (_from, to) => recogniser?.deaf(to === null),
  };
}
