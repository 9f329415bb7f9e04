// Short sounds for heard, not understood and question; off until wanted, and never the only signal.

import type { Sound } from './echo.ts';

/** Tones in Hz, one after another: up for heard, down for not understood, up and open for a question. Our own. */
const TONES: Readonly<Record<Sound, readonly number[]>> = {
  heard: [660, 880],
  'not-understood': [440, 294],
  question: [523, 523, 784],
};
const EACH = 0.09;
const LOUD = 0.12;

export interface Earcons {
  play(sound: Sound): void;
}

/** Silent where the browser has no sound, or does not allow it before the page was touched. */
export function createEarcons(make: (() => AudioContext) | null): Earcons {
  let context: AudioContext | null = null;
  return {
    play: (sound) => {
      if (make === null) return;
      try {
        context ??= make();
        void context.resume();
        for (const [index, hertz] of TONES[sound].entries())
          tone(context, hertz, context.currentTime + index * EACH);
      } catch {
        // Sound is a help and never the only signal.
      }
    },
  };
}

function tone(context: AudioContext, hertz: number, at: number): void {
  const [voice, gain] = [context.createOscillator(), context.createGain()];
  voice.frequency.value = hertz;
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(LOUD, at + 0.01);
  gain.gain.linearRampToValueAtTime(0, at + EACH);
  voice.connect(gain).connect(context.destination);
  voice.start(at);
  voice.stop(at + EACH);
}
