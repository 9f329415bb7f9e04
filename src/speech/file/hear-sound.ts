// A recording from its bytes to its utterances, one stretch of speech after another, in memory that does not grow with it.

import { RATE } from '../engine/decoder.ts';
import type { HearingFiles } from '../hearing/hearing-files.ts';
import { createListener } from '../hearing/listener.ts';
import { hearingGrammar } from '../hearing/network-of-files.ts';
import { segmenter } from '../hearing/segments.ts';
import type { HeardUtterance } from '../hearing/utterance.ts';
import { highPass, openWav, resampler, type WavEnd } from '../wav/index.ts';
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

/** Hertz; wind and handling lie below it, and the model was made for telephones, which carry little there. */
const WIND = 300;

/** Hears a recording's bytes as they come. */
export async function hearSound(
  pieces: AsyncIterable<Uint8Array>,
  files: HearingFiles,
  load: () => Promise<Loaded>,
): Promise<HeardFile | Unheard> {
  const wav = await openWav(pieces);
  if (wav.kind === 'wav-fault') return { kind: 'unheard', why: wav.why };
  const grammar = hearingGrammar(files);
  if (grammar.kind === 'errors') {
    const [first] = grammar.errors;
    return { kind: 'unheard', why: `cannot be heard: ${first?.file}:${first?.line}: ${first?.message}` };
  }
  const { module, model } = await load();
  const listener = await createListener(module, model, files, grammar);
  const rate = resampler(wav.format.rate, RATE);
  const calm = highPass(WIND, RATE);
  const segments = segmenter(module);
  const utterances: HeardUtterance[] = [];
  const hear = (stretches: ReturnType<typeof segments.push>) => {
    for (const stretch of stretches) {
      const utterance = listener.hear(stretch);
      if (utterance !== null) utterances.push(utterance);
    }
  };
  let seconds = 0;
  for (;;) {
    const next = await wav.blocks.next();
    if (next.done === true) {
      hear(segments.push(calm(rate.end())));
      hear(segments.end());
      listener.close();
      if (seconds === 0) return { kind: 'unheard', why: 'holds no sound' };
      return { kind: 'heard', utterances, seconds, end: next.value };
    }
    seconds += next.value.length / wav.format.rate;
    hear(segments.push(calm(rate.push(next.value))));
  }
}
