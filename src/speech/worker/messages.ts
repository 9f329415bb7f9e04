// What the page and the ear's worker say to each other.

import type { HeardUtterance } from '../hearing/utterance.ts';
import type { ModelPart } from '../model/model-part.ts';

export type ToEar =
  /** the first message: loads the model, as far as it is stored, and what is listened for, as `textOf` gives it */
  | { readonly kind: 'open'; readonly parts: readonly ModelPart[]; readonly worked: string }
  /** hears the blocks that come out of the port, until another port or `stop` */
  | { readonly kind: 'listen'; readonly port: MessagePort; readonly rate: number }
  /** what was recorded in this stretch (epoch ms) is not heard; `to` is null until its end is known */
  | { readonly kind: 'deaf'; readonly from: number; readonly to: number | null }
  /** finishes what is being said, and ends with `stopped` */
  | { readonly kind: 'stop' }
  /** hears a recording from its beginning to its end */
  | { readonly kind: 'file'; readonly file: Blob };

export type FromEar =
  | { readonly kind: 'ready' }
  /** the model is not stored, or is damaged and was thrown away: it must be fetched */
  | { readonly kind: 'no-model' }
  /** a sentence for the responder; the ear is of no use then */
  | { readonly kind: 'fault'; readonly why: string }
  | Heard
  | Progress
  | { readonly kind: 'stopped' }
  /** of a recording: `seconds` of sound heard so far, and the share of its bytes, 0 to 1 */
  | { readonly kind: 'progress'; readonly seconds: number; readonly share: number }
  | {
      readonly kind: 'of-file';
      readonly utterance: HeardUtterance;
      /** mono, 16 000 a second */
      readonly sound: Float32Array<ArrayBuffer>;
    }
  | { readonly kind: 'file-end'; readonly end: FileEnd };

/** Something was said: `from` and `to` by the wall clock, epoch ms. */
export interface Heard {
  readonly kind: 'heard';
  readonly utterance: HeardUtterance;
  readonly from: number;
  readonly to: number;
  /** mono, 16 000 a second */
  readonly sound: Float32Array<ArrayBuffer>;
}

/** The ear has heard what was recorded up to `at`, epoch ms. */
export interface Progress {
  readonly kind: 'come-to';
  readonly at: number;
  /** somebody is speaking, as far as the ear knows */
  readonly speech: boolean;
  /** the words of what is being said so far; they may still change, and must enter nothing */
  readonly words: readonly string[];
}

/** How the hearing of a recording ended; `seconds` of it were heard. */
export type FileEnd =
  /** `cut`: what was missing at its end, as a clause after its name, or null */
  | { readonly kind: 'heard'; readonly seconds: number; readonly cut: string | null }
  /** a clause after its name: "is no WAV recording" */
  | { readonly kind: 'unheard'; readonly why: string };
