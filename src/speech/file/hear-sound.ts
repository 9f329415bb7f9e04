// A recording from its bytes to its utterances, one stretch of speech after another, in memory that does not grow with it.

import { type Heard, openHearing } from '../hearing/hearing.ts';
import type { HeardUtterance } from '../hearing/utterance.ts';
import { workedOutOf } from '../hearing/worked-out-text.ts';
import { openWav, type WavEnd } from '../wav/index.ts';
import type { Loaded } from './load-module.ts';

export interface HeardFile {
  readonly kind: 'heard';
  /** in the order said */
  readonly utterances: readonly HeardUtterance[];
  /** length of the sound that could be read */
  readonly seconds: number;
  readonly end: WavEnd;
}

/** `why` follows a file's name: "is no WAV recording". */
export interface Unheard {
  readonly kind: 'unheard';
  readonly why: string;
}

/** Seconds of sound between two reports of how far it has come. */
const STEP = 10;

/** Hears a recording's bytes as they come; `worked` is as `textOf` gives it, and `come` is told how many seconds of sound were heard. */
export async function hearSound(
  pieces: AsyncIterable<Uint8Array>,
  worked: string,
  load: () => Promise<Loaded>,
  come: (seconds: number) => void = () => undefined,
): Promise<HeardFile | Unheard> {
  const wav = await openWav(pieces);
  if (wav.kind === 'wav-fault') return { kind: 'unheard', why: wav.why };
  const opened = openHearing({ ...(await load()), worked: workedOutOf(worked) });
  const stream = opened.begin(wav.format.rate);
  const utterances: HeardUtterance[] = [];
  const keep = (heard: readonly Heard[]) => utterances.push(...heard.map(({ utterance }) => utterance));
  let [seconds, told] = [0, 0];
  for (;;) {
    const next = await wav.blocks.next();
    if (next.done === true) {
      keep(stream.flush());
      opened.close();
      if (seconds === 0) return { kind: 'unheard', why: 'holds no sound' };
      return { kind: 'heard', utterances, seconds, end: next.value };
    }
    seconds += next.value.length / wav.format.rate;
    keep(stream.push(next.value));
    if (seconds - told < STEP) continue;
    told = seconds;
    come(seconds);
  }
}
