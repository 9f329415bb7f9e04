// Reading aloud: only by voices on the device, one sentence after another, and the ear is deaf until the last has died away.

import { describe, expect, it } from 'vitest';
import { createSpeaker, ECHO_MS, localVoice, type Voices } from '../../src/screens/voice/speaking.ts';

const voice = (lang: string, localService: boolean): SpeechSynthesisVoice =>
  ({ lang, localService, name: lang, default: false, voiceURI: lang }) as SpeechSynthesisVoice;

interface Spoken {
  text: string;
  voice: SpeechSynthesisVoice | null;
  onend: (() => void) | null;
}

/** A speaker with its sentences and timers in the test's hand. */
function made(voices: readonly SpeechSynthesisVoice[] | null) {
  const said: Spoken[] = [];
  const timers: { run: () => void; ms: number }[] = [];
  let cancelled = 0;
  const fake: Voices | null = voices && {
    getVoices: () => voices,
    speak: (one) => said.push(one as unknown as Spoken),
    cancel: () => {
      cancelled += 1;
    },
  };
  const speaker = createSpeaker({
    voices: fake,
    utter: (text) => ({ text, voice: null, lang: '', onend: null, onerror: null }) as never,
    lang: 'en-GB',
    later: (run, ms) => timers.push({ run, ms }),
  });
  const fade = () => {
    for (const { run } of timers.filter(({ ms }) => ms === ECHO_MS)) run();
  };
  return { speaker, said, timers, fade, cancelled: () => cancelled };
}

describe('a voice', () => {
  it('is taken in the language of the page before any other on the device', () => {
    const voices = [voice('de-DE', true), voice('en-US', true), voice('en_GB', true)];
    expect(localVoice(voices, 'en-GB')?.lang).toBe('en_GB');
    expect(localVoice(voices.slice(0, 2), 'en-GB')?.lang).toBe('en-US');
  });

  it('that sends the words away is never taken', () => {
    expect(localVoice([voice('en-GB', false)], 'en-GB')).toBeNull();
    const { speaker, said } = made([voice('en-GB', false)]);
    speaker.speak('LEFT forearm: swelling');
    expect(said).toEqual([]);
    expect(speaker.speaking.value).toBe(false);
    expect(speaker.voice.value).toBe('not-local');
  });

  it('may be missing altogether, and then nothing is said', () => {
    const { speaker } = made(null);
    speaker.speak('LEFT forearm: swelling');
    expect([speaker.voice.value, speaker.speaking.value]).toEqual(['none', false]);
  });
});

describe('sentences', () => {
  const LOCAL = [voice('en-GB', true)];

  it('come one after another, and the ear is deaf from before the first until the last has died away', () => {
    const { speaker, said, fade } = made(LOCAL);
    speaker.speak('one');
    expect(speaker.speaking.value).toBe(true);
    speaker.speak('two');
    expect(said.map(({ text }) => text)).toEqual(['one']);
    said[0]?.onend?.();
    expect(said.map(({ text }) => text)).toEqual(['one', 'two']);
    said[1]?.onend?.();
    expect(speaker.speaking.value).toBe(true);
    fade();
    expect(speaker.speaking.value).toBe(false);
  });

  it('said while the last one dies away keep the ear deaf', () => {
    const { speaker, said, fade } = made(LOCAL);
    speaker.speak('one');
    said[0]?.onend?.();
    speaker.speak('two');
    fade();
    expect([speaker.speaking.value, said.length]).toEqual([true, 2]);
  });

  it('are forgotten when it is hushed, and the ear is given back', () => {
    const { speaker, said, fade, cancelled } = made(LOCAL);
    speaker.speak('one');
    speaker.speak('two');
    speaker.hush();
    fade();
    expect([said.length, cancelled(), speaker.speaking.value]).toEqual([1, 1, false]);
  });

  it('whose end the browser loses do not leave the ear deaf for ever', () => {
    const { speaker, timers, fade } = made(LOCAL);
    speaker.speak('one');
    timers[0]?.run();
    fade();
    expect(speaker.speaking.value).toBe(false);
  });
});
