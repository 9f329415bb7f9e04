// The page does not listen to itself: the ears are deaf while it speaks or plays, and its own last words are dropped when they come.

import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { isEcho, type Spoken } from '../../speech/index.ts';
import type { Speaker } from '../voice/speaking.ts';
import type { Ear } from './ear.ts';

/** What was said longer ago than this, ms, echoes no more. */
const KEPT = 60_000;

export interface OwnVoice {
  /** the speaker to be used: what it says is remembered */
  readonly speaker: Speaker;
  /** true for words heard from `from` on (epoch ms) that are the page's own */
  isOwn(text: string, from: number): boolean;
  /** makes the ears deaf from now on whenever the page speaks or plays what was said */
  guard(ears: readonly Pick<Ear, 'deaf'>[]): void;
}

/** `clock` is the wall clock, epoch ms; `sounding` is true while the page makes other sounds than its voice. */
export function createOwnVoice(
  speaker: Speaker,
  clock: () => number,
  sounding: ReadonlySignal<boolean> = signal(false),
): OwnVoice {
  let spoken: readonly Spoken[] = [];
  return {
    speaker: {
      ...speaker,
      speak: (text, rate) => {
        const from = clock();
        spoken = [...spoken.filter((one) => from - one.from < KEPT), { text, from, to: null }];
        speaker.speak(text, rate);
        // Without a voice nothing sounds, and nothing echoes.
        if (!speaker.speaking.peek()) spoken = spoken.slice(0, -1);
      },
    },
    isOwn: (text, from) => isEcho(text, from, spoken),
    guard: (ears) => {
      let from: number | null = null;
      effect(() => {
        const time = clock();
        if (speaker.speaking.value || sounding.value) {
          from ??= time;
          for (const ear of ears) ear.deaf(from, null);
        } else if (from !== null) {
          for (const ear of ears) ear.deaf(from, time);
          spoken = spoken.map((one) => ({ ...one, to: one.to ?? time }));
          from = null;
        }
      });
    },
  };
}
