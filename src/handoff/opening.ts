// A report opens with what it is, when it was made, and, where nothing in it is confirmed, with just that.

import type { HandoffInput } from './input.ts';
import { beganAt, madeAt } from './moment.ts';
import { noneConfirmed } from './sentences/trust.ts';
import { type HandoffLine, heading, line, plain } from './text.ts';

/** One or two lines; sides are said to be the patient's here once for the whole report. */
export const opening = (title: string, input: HandoffInput): readonly HandoffLine[] => [
  heading(
    `${title}, made at ${madeAt(input)}; examination from ${beganAt(input)}. Left and right are the patient's.`,
  ),
  ...(noneConfirmed(input.entries)
    ? [line(plain('UNCONFIRMED: nothing in this report has been confirmed.'))]
    : []),
];
