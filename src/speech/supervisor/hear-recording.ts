// A recording heard in a worker of its own, so that neither page nor microphone waits for it; what was heard before a fault
// or a person's stop is kept.

import { type CompressedSound, compressed } from '../compressed/index.ts';
import type { HeardUtterance } from '../hearing/utterance.ts';
import type { ModelPart } from '../model/index.ts';
import type { FromEar, ToEar } from '../worker/messages.ts';

export interface RecordingParts {
  readonly makeWorker: () => Worker;
  readonly model: readonly ModelPart[];
  /** what is listened for, as it was worked out where the page was built */
  readonly worked: string;
}

/** Compressed as it comes: an hour of it as plain samples would fill a phone's memory. */
export type RecordedUtterance = HeardUtterance & { readonly sound: CompressedSound };

export type RecordingHeard =
  | {
      readonly kind: 'heard';
      /** in the order said; their times count from the recording's beginning */
      readonly utterances: readonly RecordedUtterance[];
      /** why not all of it was heard, as a clause after its name, or null */
      readonly cut: string | null;
    }
  /** a clause after its name: "is no WAV recording" */
  | { readonly kind: 'unheard'; readonly why: string };

export interface RecordingInHand {
  readonly heard: Promise<RecordingHeard>;
  /** ends it; what was heard so far is kept */
  stop(): void;
}

/** `progress` is told seconds of sound heard so far and the share of the bytes, 0 to 1. */
export function hearRecording(
  { makeWorker, model, worked }: RecordingParts,
  recording: Blob,
  progress: (seconds: number, share: number) => void,
): RecordingInHand {
  const worker = makeWorker();
  const utterances: RecordedUtterance[] = [];
  const post = (message: ToEar): void => worker.postMessage(message);
  let end: (heard: RecordingHeard) => void = () => undefined;
  const heard = new Promise<RecordingHeard>((resolve) => {
    end = (how) => {
      worker.terminate();
      resolve(how);
    };
  });
  const broken = (why: string): void =>
    end(utterances.length > 0 ? { kind: 'heard', utterances, cut: why } : { kind: 'unheard', why });

  worker.onerror = () => broken('could not be heard to its end: the recogniser failed');
  worker.onmessage = ({ data }: MessageEvent<FromEar>) => {
    switch (data.kind) {
      case 'ready':
        post({ kind: 'file', file: recording });
        break;
      case 'no-model':
        broken('cannot be heard before the recogniser is fetched');
        break;
      case 'fault':
        broken(`cannot be heard. ${data.why}`);
        break;
      case 'progress':
        progress(data.seconds, data.share);
        break;
      case 'of-file':
        utterances.push({ ...data.utterance, sound: compressed(data.sound) });
        break;
      case 'file-end':
        if (data.end.kind === 'heard') end({ kind: 'heard', utterances, cut: data.end.cut });
        else broken(data.end.why);
        break;
    }
  };
  post({ kind: 'open', parts: model, worked });
  return { heard, stop: () => broken('was stopped before its end') };
}
