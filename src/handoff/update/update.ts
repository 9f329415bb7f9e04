// A second report: what changed since the first one was made, in writing and for the radio.

import type { Entry } from '../../record/entry.ts';
import { dayOf } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { clockThere, madeAt } from '../moment.ts';
import { sectionIfSaid } from '../orders/section.ts';
import { type Chunk, chunks } from '../radio/chunks.ts';
import { bare, lineOf } from '../radio/line.ts';
import { speak } from '../radio/speak.ts';
import { type Told, written } from '../sentences/told.ts';
import { type HandoffText, heading, line, plain } from '../text.ts';
import {
  changedFindings,
  changedLimbs,
  changedRest,
  changedSigns,
  confirmedSince,
  heardBy,
  metSince,
  parted,
  takenBack,
} from './changes.ts';

interface Section {
  readonly title: string;
  readonly told: readonly Told[];
}

/** What is known of the report before besides when it was made. */
export interface ReportBefore {
  /** ids of the entries that it could tell; without them the time decides */
  readonly told?: ReadonlySet<string>;
  /** ids of the entries that were confirmed after it was made */
  readonly confirmed?: ReadonlySet<string>;
}

function sections(
  input: HandoffInput,
  since: string,
  { told: toldIds, confirmed = new Set() }: ReportBefore,
): readonly Section[] {
  const day = dayOf(input.startedAt);
  const isTold = toldIds === undefined ? heardBy(Date.parse(since)) : ({ id }: Entry) => toldIds.has(id);
  const parts = parted(input.entries, isTold);
  return [
    { title: 'Taken back', told: takenBack(input, isTold) },
    { title: 'Criteria', told: metSince(input, parts) },
    { title: 'Signs', told: changedSigns(parts, day) },
    { title: 'Findings', told: changedFindings(parts, day) },
    { title: 'Circulation, sensation and motion', told: changedLimbs(parts, day) },
    { title: 'Care, history and words kept', told: changedRest(parts, day) },
    { title: 'Confirmed since', told: confirmedSince(parts, confirmed, day) },
  ];
}

const opening = (input: HandoffInput, since: string): string =>
  `Update since ${clockThere(input, Date.parse(since))}`;

/** What changed since `since` (ISO 8601 with offset), or that nothing did; left and right are the patient's. */
export function updateSince(input: HandoffInput, since: string, before: ReportBefore = {}): HandoffText {
  const all = sections(input, since, before);
  const none = all.every(({ told }) => told.length === 0);
  return {
    lines: [
      heading(`${opening(input, since)}, made at ${madeAt(input)}. Left and right are the patient's.`),
      ...(none ? [line(plain('Nothing new was said.'))] : []),
      ...all.flatMap(({ title, told }) => sectionIfSaid(title, told.map(written))),
    ],
  };
}

/** The same for the radio, in pieces of at most 40 words. */
export function radioUpdate(
  input: HandoffInput,
  since: string,
  before: ReportBefore = {},
): { readonly chunks: readonly Chunk[] } {
  const told = sections(input, since, before).flatMap((section) => section.told.map(lineOf));
  const lines = told.length === 0 ? [bare('Nothing new was said')] : told;
  return { chunks: chunks([bare(speak(opening(input, since))), ...lines]) };
}
