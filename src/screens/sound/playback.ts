// Plays the sound of one utterance at a time; while it sounds, and a moment longer, whoever listens must be deaf.

import { type ReadonlySignal, signal } from '@preact/signals';
import { uncompressed } from '../../speech/compressed/index.ts';
import { ECHO_MS } from '../voice/speaking.ts';
import type { Sounds } from './sounds.ts';

export interface Playback {
  /** true from before the first sound until it has died away */
  readonly sounding: ReadonlySignal<boolean>;
  /** the utterance that sounds, or null */
  readonly playing: ReadonlySignal<string | null>;
  /** plays it from its beginning, in place of one that sounds; false where there is no sound of it */
  play(record: string, utterance: string): Promise<boolean>;
  stop(): void;
}

/** The little of Web Audio (W3C Recommendation of 17 June 2021) that is used. */
export type SoundOutput = Pick<
  AudioContext,
  'resume' | 'createBuffer' | 'createBufferSource' | 'destination'
>;

const RATE = 16_000;

/** `output` is made when it is first used: browsers want a press before it. */
export function createPlayback(
  sounds: Pick<Sounds, 'read'>,
  output: () => SoundOutput,
  later: (run: () => void, ms: number) => unknown = setTimeout,
): Playback {
  const sounding = signal(false);
  const playing = signal<string | null>(null);
  let made: SoundOutput | null = null;
  /** counts what was begun, so that an end that comes late ends nothing newer */
  let turn = 0;
  let source: AudioBufferSourceNode | null = null;

  const hush = (): void => {
    const was = source;
    source = null;
    was?.stop();
    playing.value = null;
  };
  const end = (mine: number): void => {
    if (turn !== mine) return;
    hush();
    later(() => {
      if (turn === mine) sounding.value = false;
    }, ECHO_MS);
  };

  return {
    sounding,
    playing,
    stop: () => end(turn),
    play: async (record, utterance) => {
      turn += 1;
      const mine = turn;
      hush();
      // Deaf before the first sound, not with it.
      sounding.value = true;
      playing.value = utterance;
      try {
        const clip = await sounds.read(record, utterance);
        const sound = clip === null ? null : uncompressed(clip);
        if (turn !== mine || playing.peek() === null) return true;
        if (sound === null || sound.length === 0) {
          end(mine);
          return false;
        }
        made ??= output();
        await made.resume();
        if (turn !== mine || playing.peek() === null) return true;
        const buffer = made.createBuffer(1, sound.length, RATE);
        buffer.copyToChannel(sound, 0);
        source = made.createBufferSource();
        source.buffer = buffer;
        source.connect(made.destination);
        source.onended = () => end(mine);
        source.start();
        return true;
      } catch {
        end(mine);
        return false;
      }
    },
  };
}
