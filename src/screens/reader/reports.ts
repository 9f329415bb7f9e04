// The reports that can be read over the radio, each in pieces, as they stand when they are asked for.

import {
  type Chunk,
  type HandoffInput,
  type RadioOrder,
  type ReportBefore,
  radio,
  radioDetails,
  radioUpdate,
} from '../../handoff/index.ts';
import type { KeptStep, RecordEvent, ReportPart } from '../../record/index.ts';

export interface MadeReport {
  readonly part: ReportPart;
  readonly pieces: readonly Chunk[];
  /** ISO 8601 with offset: what it tells is what was said by then */
  readonly made: string;
}

export const REPORT_NAMES: Readonly<Record<ReportPart, string>> = {
  script: 'Report',
  update: 'What changed',
  details: 'Further details',
  again: 'Said again',
};

/**
 * When the last report that was read to its end was made; what was said after it has not been told. Null where none was.
 */
export function toldUntil(steps: readonly KeptStep[]): string | null {
  const last = steps.findLast(
    (one) => one.step === 'sent' && (one.part === 'script' || one.part === 'update') && one.piece === one.of,
  );
  return last?.step === 'sent' ? last.made : null;
}

/**
 * What the last report read to its end could tell, which is all that was in the log before its first piece was sent; and
 * what was confirmed after that.
 */
export function reportBefore(events: readonly RecordEvent[]): Required<ReportBefore> {
  const end = events.findLastIndex(
    ({ kind, payload }) =>
      kind === 'handed-over' && payload.step === 'sent' && isReport(payload) && payload.piece === payload.of,
  );
  const made = sentAt(events[end]);
  const begun = Math.max(
    0,
    events.findIndex((event) => made !== null && sentAt(event) === made),
  );
  const told = events
    .slice(0, begun)
    .flatMap((event) =>
      event.kind === 'entered'
        ? [event.payload.id]
        : event.kind === 'corrected'
          ? event.payload.replacements.map(({ id }) => id)
          : [],
    );
  const confirmed = events
    .slice(begun)
    .flatMap((event) => (event.kind === 'confirmed' ? event.payload.entries : []));
  return { told: new Set(told), confirmed: new Set(confirmed) };
}

/** When the report was made that the event sent a piece of; null of any other event. */
const sentAt = (event: RecordEvent | undefined): string | null =>
  event?.kind === 'handed-over' && event.payload.step === 'sent' && isReport(event.payload)
    ? event.payload.made
    : null;

const isReport = ({ part }: { readonly part: ReportPart }): boolean => part === 'script' || part === 'update';

export interface ReportWishes {
  readonly order: RadioOrder;
  /** ISO 8601: when the report before was made, and what is known of it; only an update goes by them */
  readonly since: string;
  readonly before: ReportBefore;
  readonly made: string;
}

/** The report of that kind; an update since `since`, which the other kinds do not need. */
export function makeReport(
  part: Exclude<ReportPart, 'again'>,
  input: HandoffInput,
  { order, since, before, made }: ReportWishes,
): MadeReport {
  const { chunks } =
    part === 'script'
      ? radio(input, order)
      : part === 'update'
        ? radioUpdate(input, since, before)
        : radioDetails(input, order);
  return { part, pieces: chunks, made };
}
