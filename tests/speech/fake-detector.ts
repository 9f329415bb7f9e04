// A detector of speech that takes loud sound for speech, and tells of an end when it is a window old, as the package's does.

import type { SoundModule } from '../../src/speech/engine/sound-module.ts';

const RATE = 16_000;
const FRAME = 480;
const LOUD = 0.1;
/** Seconds after which an end is told of. */
const WINDOW = 0.3;

/** A compiled module of which nothing but the detector is there. */
export function fakeDetector(): SoundModule {
  class Endpointer {
    private time = 0;
    private lastLoud = -1;
    private start = 0;
    private isIn = false;
    get_frame_size = () => FRAME;
    get_in_speech = () => this.isIn;
    get_speech_start = () => this.start;
    get_speech_end = () => this.lastLoud;
    process = (frame: Float32Array) => {
      let isLoud = false;
      for (let at = 0; at < frame.length; at += 8) isLoud ||= Math.abs(frame[at] ?? 0) > LOUD;
      if (isLoud && !this.isIn) [this.isIn, this.start] = [true, this.time];
      this.time += FRAME / RATE;
      if (isLoud) this.lastLoud = this.time;
      if (this.isIn && this.time - this.lastLoud >= WINDOW) this.isIn = false;
      return null;
    };
  }
  return { Endpointer } as unknown as SoundModule;
}
