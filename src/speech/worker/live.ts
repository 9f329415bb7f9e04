// Hears blocks of sound with their wall-clock times as one stream after another: where sound is missing a new one begins,
// so that the time of every word stays true.

import type { Hearing, HearingStream, Heard as StreamHeard } from '../hearing/hearing.ts';
import type { SoundBlock } from '../microphone/tap.ts';
import type { Deafness } from './deaf.ts';
import type { Heard, Progress } from './messages.ts';

export interface LiveHearing {
  block(block: SoundBlock): void;
  /** finishes what is being said */
  end(): void;
}

/** Sound that comes later than this, ms, did not follow what came before it. */
const HOLE = 1000;
/** How often the page is told how far the ear has come, ms of sound. */
const STEP = 100;

/** `tell` is called with what was heard and how far the ear has come; the blocks have `rate` samples a second. */
export function hearLive(
  hearing: Hearing,
  rate: number,
  deafness: Deafness,
  tell: (news: Heard | Progress) => void,
): LiveHearing {
  let stream: HearingStream | null = null;
  /** wall clock of the stream's first sample, of the end of its last block, and of what the page was told last */
  let [origin, until, told] = [0, 0, 0];

  const tellAll = (heard: readonly StreamHeard[]): void => {
    for (const { utterance, sound } of heard) {
      const [from, to] = [origin + utterance.start * 1000, origin + utterance.end * 1000];
      tell({ kind: 'heard', utterance, from, to, sound: new Float32Array(sound) });
    }
  };

  const end = (): void => {
    if (stream !== null) tellAll(stream.flush());
    stream = null;
  };

  return {
    end,
    block: ({ samples, at }) => {
      const began = at - (samples.length / rate) * 1000;
      // A clock that was set back breaks the stream too.
      if (stream !== null && Math.abs(began - until) > HOLE) end();
      if (stream === null) {
        stream = hearing.begin(rate);
        origin = began;
      }
      until = at;
      tellAll(stream.push(deafness.quieted(samples, at, rate)));
      if (Math.abs(at - told) < STEP) return;
      told = at;
      tell({ kind: 'come-to', at, speech: stream.isSpeech(), words: stream.soFar() });
    },
  };
}
