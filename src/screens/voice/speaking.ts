// Reads sentences aloud with a voice that is on the device itself; while it speaks, `speaking` is true and the ear must be deaf.

import { type ReadonlySignal, signal } from '@preact/signals';

/** The little of the browser's speech that is used (Web Speech API, draft of the W3C Audio group). */
export interface Voices {
  getVoices(): readonly SpeechSynthesisVoice[];
  speak(utterance: SpeechSynthesisUtterance): void;
  cancel(): void;
  addEventListener?(type: 'voiceschanged', hear: () => void): void;
}

export type VoiceState =
  /** the browser cannot speak at all */
  | 'none'
  /** it can, but only with voices that would send the words away, or with none */
  | 'not-local'
  | 'local';

export interface Speaker {
  /** true from the first word until the sound has died away: nothing that is heard meanwhile is the responder's */
  readonly speaking: ReadonlySignal<boolean>;
  readonly voice: ReadonlySignal<VoiceState>;
  /** says the sentence after those that wait; without a local voice it is passed over. `rate`: 1 is the voice's own */
  speak(text: string, rate?: number): void;
  /** stops at once and forgets what waits */
  hush(): void;
}

interface Parts {
  readonly voices: Voices | null;
  /** makes an utterance; apart so that a test needs no browser */
  readonly utter: (text: string) => SpeechSynthesisUtterance;
  readonly lang: string;
  readonly later: (run: () => void, ms: number) => unknown;
}

/** How long a room still sounds after the last word, ms; our choice, no source. */
export const ECHO_MS = 400;
/** Browsers lose the end of an utterance now and then; after this long the ear is given back, ms a character and at least. */
const LOST = { each: 150, least: 4000 };

/** A voice on the device for this language before any other on the device; null where there is none. */
export function localVoice(
  voices: readonly SpeechSynthesisVoice[],
  lang: string,
): SpeechSynthesisVoice | null {
  const [mine = 'en'] = lang.split('-');
  const here = voices.filter(({ localService }) => localService);
  return (
    here.find((voice) => voice.lang.replace('_', '-') === lang) ??
    here.find((voice) => voice.lang.startsWith(mine)) ??
    here.find((voice) => voice.lang.startsWith('en')) ??
    null
  );
}

/** A speaker; `voices` is null where the browser cannot speak. */
export function createSpeaker({ voices, utter, lang, later }: Parts): Speaker {
  const speaking = signal(false);
  const voice = signal<VoiceState>('none');
  let waiting: readonly { readonly text: string; readonly rate: number }[] = [];
  /** true while a sentence sounds; `speaking` lasts a little longer */
  let sounding = false;
  /** counts what was begun, so that an end that comes late ends nothing newer */
  let turn = 0;

  const find = (): SpeechSynthesisVoice | null => {
    const found = voices === null ? null : localVoice(voices.getVoices(), lang);
    voice.value = voices === null ? 'none' : found === null ? 'not-local' : 'local';
    return found;
  };

  const next = (): void => {
    const [first, ...rest] = waiting;
    const chosen = find();
    turn += 1;
    const mine = turn;
    sounding = first !== undefined && chosen !== null;
    if (first === undefined || chosen === null || voices === null) {
      waiting = [];
      later(() => {
        if (turn === mine) speaking.value = false;
      }, ECHO_MS);
      return;
    }
    waiting = rest;
    const { text, rate } = first;
    const one = utter(text);
    one.rate = rate;
    one.voice = chosen;
    one.lang = chosen.lang;
    const over = (): void => {
      if (turn === mine) next();
    };
    one.onend = over;
    one.onerror = over;
    voices.speak(one);
    later(over, Math.max(LOST.least, (text.length * LOST.each) / rate));
  };

  find();
  voices?.addEventListener?.('voiceschanged', find);
  return {
    speaking,
    voice,
    speak: (text, rate = 1) => {
      if (text.trim() === '' || find() === null) return;
      waiting = [...waiting, { text, rate }];
      // Deaf before the first sound, not with it.
      speaking.value = true;
      if (!sounding) next();
    },
    hush: () => {
      waiting = [];
      voices?.cancel();
      if (sounding) next();
    },
  };
}

/** The speaker of this browser, in the language of the page. */
export function speakerIn(scope: Window & typeof globalThis): Speaker {
  const there = 'speechSynthesis' in scope && 'SpeechSynthesisUtterance' in scope;
  return createSpeaker({
    voices: there ? scope.speechSynthesis : null,
    utter: (text) => new SpeechSynthesisUtterance(text),
    lang: document.documentElement.lang,
    later: (run, ms) => setTimeout(run, ms),
  });
}
