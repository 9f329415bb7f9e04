// The reports that can be read over the radio, each in pieces, as they stand when they are asked for.

import {
  type Chunk,
  type HandoffInput,
  type RadioOrder,
  radio,
  radioDetails,
  radioUpdate,
} from '../../handoff/index.ts';
import type { KeptStep, ReportPart } from '../../record/index.ts';

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

/** The report of that kind; an update since `since`, which the other kinds do not need. */
export function makeReport(
  part: Exclude<ReportPart, 'again'>,
  input: HandoffInput,
  { order, since, made }: { readonly order: RadioOrder; readonly since: string; readonly made: string },
): MadeReport {
  const { chunks } =
    part === 'script'
      ? radio(input, order)
      : part === 'update'
        ? radioUpdate(input, since)
        : radioDetails(input, order);
  return { part, pieces: chunks, made };
}
