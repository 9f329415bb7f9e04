// Runs beside the sound card: hands every block of sound to the ear, mixed to one channel, with the time it ended at, and
// tells the page how loud it is. Both go by the sound alone, however busy page and ear are.

import { emptyLoudness, type Loudness, louder } from './loudness.ts';

/** What the ear is handed. */
export interface SoundBlock {
  /** mono, -1 to 1, at the rate of the audio context */
  readonly samples: Float32Array<ArrayBuffer>;
  /** wall clock at its end, epoch ms; taken here, since a busy ear receives it late */
  readonly at: number;
}

// The scope of an audio worklet, which TypeScript does not know (Web Audio API, W3C Recommendation of 17 June 2021).
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;
declare const sampleRate: number;

/** Samples in a block, and in what the page is told of the loudness: 40 and 120 ms. */
const BLOCK = Math.round(sampleRate * 0.04);
const TOLD = 3 * BLOCK;

class Tap extends AudioWorkletProcessor {
  private ear: MessagePort | null = null;
  private block = new Float32Array(BLOCK);
  private filled = 0;
  private loudness: Loudness = emptyLoudness;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.ear = data;
    };
  }

  /** Called for every 128 samples; false ends it. */
  process([channels = []]: readonly (readonly Float32Array[])[]): boolean {
    const [first] = channels;
    // Without an input the microphone is being opened or was lost; nobody is told what was not heard.
    if (first === undefined) return true;
    for (let at = 0; at < first.length; at++) {
      let sum = 0;
      for (const channel of channels) sum += channel[at] ?? 0;
      this.block[this.filled] = sum / channels.length;
      this.filled += 1;
      if (this.filled === BLOCK) this.hand(Date.now());
    }
    return true;
  }

  private hand(at: number): void {
    this.loudness = louder(this.loudness, this.block);
    const block: SoundBlock = { samples: this.block, at };
    this.ear?.postMessage(block, [this.block.buffer]);
    this.block = new Float32Array(BLOCK);
    this.filled = 0;
    if (this.loudness.count < TOLD) return;
    const { power, peak, clipped, count } = this.loudness;
    const from = at - (count / sampleRate) * 1000;
    this.port.postMessage({ from, to: at, rms: Math.sqrt(power / count), peak, clipped: clipped / count });
    this.loudness = emptyLoudness;
  }
}

registerProcessor('tap', Tap);
