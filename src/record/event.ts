// The events of the log: immutable, in the order they came, and enough to rebuild the record from nothing.

import type { Change, Command, CorrectionTarget, PatientMeant, RecordMeant } from '../parse/frame.ts';
import type { Known, SaidProblemChange, Statement } from '../terms/index.ts';
import type { Filed } from './filing.ts';
import type { HandoverStep } from './handover.ts';
import type { WordHeard } from './unsure.ts';

/** The version of the log's format; `migrate` brings older ones up to it. Format 2 added `filed`. */
export const FORMAT = 2;

/** An entry as it enters the record; its state is worked out from the events after it. */
export interface EnteredEntry {
  /** unique in the log */
  readonly id: string;
  readonly statement: Statement;
  /** ISO 8601 with offset: when it was so */
  readonly at: string;
  /** ISO 8601 with offset: when it was said */
  readonly heardAt: string;
  /** the words it came from, as said */
  readonly heard: string;
  readonly known: Readonly<Record<string, Exclude<Known, 'spoken'>>>;
  readonly doubt: readonly string[];
  /** the utterance event it came from, or null where a hand entered it */
  readonly utterance: string | null;
  /** entries said as one share a group */
  readonly group: string;
}

/** An utterance as logged, before anything is made of it, so that a better parser can read it again. */
export interface LoggedUtterance {
  readonly text: string;
  /** ISO 8601 with offset */
  readonly heardAt: string;
  /** IANA zone or fixed offset in which spoken clock times are meant */
  readonly zone: string;
  readonly alternatives?: readonly string[];
  readonly engine?: string;
  /** 0 to 1, as the engine gave it */
  readonly confidence?: number;
  /** each word with how surely it was heard, and why the whole is in doubt */
  readonly words?: readonly WordHeard[];
  readonly doubt?: readonly string[];
}

/** A stretch in which nobody could be heard though listening was wanted: what was said then is not in the record. */
export interface Unheard {
  /** ISO 8601 with offset */
  readonly from: string;
  readonly to: string;
  /** a clause: "the page was hidden" */
  readonly why: string;
}

/** What can happen to a record. */
export type Happening =
  | { readonly kind: 'started'; readonly payload: { readonly startedAt: string; readonly zone: string } }
  | { readonly kind: 'utterance'; readonly payload: LoggedUtterance }
  | { readonly kind: 'unheard'; readonly payload: Unheard }
  | { readonly kind: 'entered'; readonly payload: EnteredEntry }
  | {
      readonly kind: 'corrected';
      readonly payload: {
        /** the entries that are replaced */
        readonly targets: readonly string[];
        /** what takes their place, the corrected statement first; the rest is what the correction left untouched */
        readonly replacements: readonly EnteredEntry[];
      };
    }
  | {
      readonly kind: 'struck';
      readonly payload: { readonly entries: readonly string[]; readonly by: string };
    }
  | {
      /** what was struck stands again, and waits to be confirmed anew */
      readonly kind: 'restored';
      readonly payload: { readonly entries: readonly string[]; readonly by: string };
    }
  | {
      readonly kind: 'confirmed';
      readonly payload: { readonly entries: readonly string[]; readonly by: string };
    }
  | {
      readonly kind: 'command';
      readonly payload: {
        readonly command: Command;
        /** for `patient`: which one is turned to */
        readonly patient?: PatientMeant;
        /** for `patient`: what was said after it in the same breath */
        readonly rest?: string;
        /** for `open-record`: which one */
        readonly record?: RecordMeant;
        readonly heard: string;
        readonly utterance: string;
      };
    }
  | {
      readonly kind: 'problems';
      readonly payload: {
        /** what was done to the problem list; which problem it means is worked out from the entries */
        readonly change: SaidProblemChange;
        /** the words it came from, as said, or that a hand did it */
        readonly by: string;
        /** the utterance event it came from, or null where a hand did it */
        readonly utterance: string | null;
      };
    }
  | { readonly kind: 'handed-over'; readonly payload: HandoverStep }
  | { readonly kind: 'filed'; readonly payload: Filed }
  | {
      readonly kind: 'unmatched-correction';
      readonly payload: {
        readonly heard: string;
        readonly utterance: string;
        readonly target: CorrectionTarget;
        readonly change: Change;
        readonly why: string;
      };
    };

export interface EventFacts {
  readonly format: typeof FORMAT;
  /** `device-seq` */
  readonly id: string;
  readonly device: string;
  /** counts from 1 on each device */
  readonly seq: number;
  /** ISO 8601 with offset: the wall clock when it was logged */
  readonly time: string;
}

export type RecordEvent = EventFacts & Happening;

export const EVENT_KINDS: readonly Happening['kind'][] = [
  'started',
  'utterance',
  'unheard',
  'entered',
  'corrected',
  'struck',
  'restored',
  'confirmed',
  'command',
  'problems',
  'handed-over',
  'filed',
  'unmatched-correction',
];
