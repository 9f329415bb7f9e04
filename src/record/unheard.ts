// A stretch in which nothing could be heard is logged with its times, so that silence is never taken for an examination.

import { formatIso } from '../parse/times/index.ts';
import type { Unheard } from './event.ts';
import { append, type Exam } from './exam.ts';

export interface UnheardStretch {
  /** milliseconds since the epoch */
  readonly from: number;
  readonly to: number;
  /** a clause: "the page was hidden" */
  readonly why: string;
}

/**
 * The examination with the stretch in its log. What was said then may have named another site or asked a question, so
 * nothing is carried past it: `blank` is what a reader has in mind at its beginning.
 */
export function logUnheard<Context>(
  exam: Exam<Context>,
  blank: Context,
  { from, to, why }: UnheardStretch,
): Exam<Context> {
  const iso = (epochMs: number): string => formatIso(epochMs, exam.zone);
  const payload: Unheard = { from: iso(from), to: iso(to), why };
  return { ...append(exam, payload.to, () => ({ kind: 'unheard', payload })), context: blank };
}
