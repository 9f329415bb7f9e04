// How it stands with listening, as the views show it; what really hears is fetched only when it is first needed.

import { type Signal, signal } from '@preact/signals';
import type { Advice, Calibration } from '../../speech/index.ts';
import type { EarNow, Gap, RecordingHeard } from '../../speech/supervisor/index.ts';
import type { Heard } from '../../speech/worker/messages.ts';

/** The recogniser's model on this device. */
export type ModelNow =
  | { readonly state: 'unknown' }
  /** this browser cannot store or run it; `why` is a sentence */
  | { readonly state: 'impossible'; readonly why: string }
  /** not stored: `bytes` are to be fetched; `why` is a sentence on the last try, or empty */
  | { readonly state: 'missing'; readonly bytes: number; readonly why: string }
  | { readonly state: 'fetching'; readonly done: number; readonly of: number }
  | { readonly state: 'stored' };

/** A recording that is being heard; `share` of it, 0 to 1. */
export interface RecordingNow {
  readonly name: string;
  readonly seconds: number;
  readonly share: number;
}

/** How loud it is, in decibels under full scale, and what could be done about it. */
export interface AdviceNow {
  readonly decibels: number;
  readonly advice: Advice;
}

export interface Ear {
  readonly now: Signal<EarNow>;
  readonly model: Signal<ModelNow>;
  readonly loudness: Signal<AdviceNow>;
  /** somebody is speaking; ms of sound that are still to be heard */
  readonly progress: Signal<{ readonly speech: boolean; readonly behind: number; readonly words: string }>;
  /** what this place and speaker sound like, where a person had it measured; kept over a reload, forgotten with the microphone and the day */
  readonly calibration: Signal<Calibration>;
  /** null while none is heard */
  readonly recording: Signal<RecordingNow | null>;
  /** looks whether the model is stored */
  look(): Promise<void>;
  /** fetches the model; asked for by a person */
  prepare(): Promise<void>;
  /** stops fetching; what has arrived stays */
  cancel(): void;
  start(): Promise<void>;
  /** what is being said is still heard; resolves when it is in the record */
  stop(): Promise<void>;
  /** what is recorded from `from` to `to` (epoch ms; null until it is known) is not heard */
  deaf(from: number, to: number | null): void;
  /** measures the place and the speaker; listening is started where it is off, and goes on meanwhile */
  calibrate(): Promise<void>;
  /** hears a recording; what came of it is told, not returned */
  open(recording: File): Promise<void>;
  /** ends the hearing of a recording; what was heard of it is kept */
  enough(): void;
}

/** What an engine is given: where it shows how it stands, and where it says what it heard. */
export interface EarParts
  extends Pick<Ear, 'now' | 'model' | 'loudness' | 'progress' | 'calibration' | 'recording'> {
  heard(heard: Heard): void;
  gap(gap: Gap): void;
  recorded(name: string, heard: RecordingHeard): void;
  /** where the last measurement is kept over a reload; null where the browser refuses it */
  readonly storage: Storage | null;
}

export type Engine = Pick<
  Ear,
  'look' | 'prepare' | 'cancel' | 'start' | 'stop' | 'deaf' | 'calibrate' | 'open' | 'enough'
>;

/** `fetchEngine` gives what hears, the first time it is needed. */
export function createEar(
  fetchEngine: (parts: EarParts) => Promise<Engine>,
  told: Pick<EarParts, 'heard' | 'gap' | 'recorded' | 'storage'>,
): Ear {
  const shown = {
    now: signal<EarNow>({ state: 'off' }),
    model: signal<ModelNow>({ state: 'unknown' }),
    loudness: signal<AdviceNow>({ decibels: -100, advice: 'fine' }),
    progress: signal({ speech: false, behind: 0, words: '' }),
    calibration: signal<Calibration>({ state: 'none' }),
    recording: signal<RecordingNow | null>(null),
  };
  let engine: Engine | null = null;
  let coming: Promise<Engine> | null = null;
  let openDeaf: number | null = null;
  const use = async (act: (engine: Engine) => Promise<void>): Promise<void> => {
    coming ??= fetchEngine({ ...shown, ...told });
    try {
      if (engine === null) {
        engine = await coming;
        if (openDeaf !== null) engine.deaf(openDeaf, null);
      }
      await act(engine);
    } catch {
      if (engine === null) coming = null;
      const why = 'The recogniser could not be loaded; reload the page, or type.';
      shown.model.value = { state: 'impossible', why };
    }
  };
  return {
    ...shown,
    look: () => use((one) => one.look()),
    prepare: () => use((one) => one.prepare()),
    start: () => use((one) => one.start()),
    calibrate: () => use((one) => one.calibrate()),
    open: (recording) => use((one) => one.open(recording)),
    enough: () => engine?.enough(),
    cancel: () => engine?.cancel(),
    stop: async () => engine?.stop(),
    deaf: (from, to) => {
      openDeaf = to === null ? from : null;
      engine?.deaf(from, to);
    },
  };
}
