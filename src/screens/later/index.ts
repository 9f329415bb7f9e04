// Promises what the page can be shown without and is fetched right after: the reader, the reckoning, their panels.

import type { ReadonlySignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { Body } from '../body/Body.tsx';
import type { Derived, Desk } from '../desk/index.ts';
import { Entries } from '../entries/Entries.tsx';
import type { Panel } from '../frame/panels.ts';
import { Report } from '../report/Report.tsx';
import { Signs } from '../signs/Signs.tsx';
import { answer } from '../voice/answer.ts';
import type { VitalsPace } from '../voice/reminding.ts';
import { WordsSheet } from '../voice/WordsSheet.tsx';
import { type BuiltReader, buildReader } from './build-reader.ts';
import { type Worked, workOut } from './worked.ts';

export { remindOfVitals } from '../voice/reminder.ts';

export interface Later {
  readonly worked: Worked;
  readonly views: Readonly<Record<Exclude<Panel, 'talk'>, FunctionComponent>>;
  /** does what a command asks for: none can come before the reader is there */
  readonly answer: typeof answer;
  readonly Words: typeof WordsSheet;
}

/** The panels and the reader, built now. */
export const makeReady = (
  desk: Desk,
  derived: Derived,
  pace: ReadonlySignal<VitalsPace>,
): Later & BuiltReader => ({
  worked: workOut(desk, derived, pace),
  views: { entries: Entries, body: Body, signs: Signs, report: Report },
  answer,
  Words: WordsSheet,
  ...buildReader(),
});
