// What was passed on over the radio, what came back and what was asked, as events; the entries themselves are not touched.

import { formatIso } from '../parse/times/index.ts';
import { append, type Exam } from './exam.ts';

/** Which report a piece belongs to; `again` is what was said once more after it was read back wrong. */
export type ReportPart = 'script' | 'update' | 'details' | 'again';

export type HandoverStep =
  | {
      readonly step: 'sent';
      readonly part: ReportPart;
      /** counts from 1 */
      readonly piece: number;
      readonly of: number;
      /** as it was said */
      readonly text: string;
      /** ids of the entries told in it */
      readonly entries: readonly string[];
      /** who said it into the radio */
      readonly by: 'person' | 'device';
      /** ISO 8601 with offset: when the report was made, which is what an update goes on from */
      readonly made: string;
    }
  | {
      readonly step: 'read-back';
      /** the words of the other end, as typed or recognised */
      readonly heard: string;
      readonly rows: readonly {
        readonly kind: 'matched' | 'differs' | 'missing';
        /** the value as it was asked back */
        readonly value: string;
        readonly sentence: string;
      }[];
    }
  | {
      readonly step: 'question';
      readonly text: string;
      /** where the command post asked it: its own name for the question */
      readonly asked?: string;
    }
  | {
      readonly step: 'answer';
      /** id of the question's event */
      readonly question: string;
      readonly text: string;
    }
  /** the record was handed to another device, which writes from here on */
  | { readonly step: 'passed'; readonly to: string; readonly name: string }
  /** this device took the record over: `after` names the last event of the history that it goes on from */
  | { readonly step: 'taken'; readonly from: string; readonly name: string; readonly after: string }
  /** a copy of the whole record left this device without a network; `sealed` where it takes a passphrase to read it */
  | { readonly step: 'copied'; readonly by: 'symbols' | 'file' | 'share' | 'fhir'; readonly sealed: boolean }
  /** so many events came in from another device */
  | { readonly step: 'received'; readonly by: 'symbols' | 'file'; readonly events: number }
  /** words heard while the radio was in use: kept as said, and never read as findings */
  | { readonly step: 'aside'; readonly text: string; readonly engine: string };

/** A step as the record keeps it: `id` of its event, `at` ISO 8601 with offset. */
export type KeptStep = HandoverStep & { readonly id: string; readonly at: string };

/** The examination with one more step of its handing over; `time` in milliseconds since the epoch. */
export const handOver = <C>(exam: Exam<C>, step: HandoverStep, time: number): Exam<C> =>
  append(exam, formatIso(time, exam.zone), () => ({ kind: 'handed-over', payload: step }));
