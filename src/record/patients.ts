// Which patient's record a spoken turn means: the page and the terminal both go by this.

import type { Frame, PatientMeant } from '../parse/frame.ts';
import type { RecordEvent } from './event.ts';

export interface Patients {
  /** numbers that have a record; the first patient is 1 */
  readonly known: readonly number[];
  readonly current: number;
  /** the one that was open before the current one */
  readonly before?: number;
}

export type Turn =
  | { readonly kind: 'open'; readonly patient: number }
  | { readonly kind: 'begin'; readonly patient: number }
  /** `why`: one sentence to show; nothing is to be opened */
  | { readonly kind: 'no-such-patient'; readonly why: string };

/** The record to open or to begin. A number without a record begins one: "patient two" may be the first word of it. */
export function turnTo({ known, current, before }: Patients, meant: PatientMeant): Turn {
  const fresh: Turn = { kind: 'begin', patient: Math.max(0, ...known) + 1 };
  if (meant === 'new') return fresh;
  if (meant === 'next') {
    const later = known.filter((patient) => patient > current);
    return later.length === 0 ? fresh : { kind: 'open', patient: Math.min(...later) };
  }
  if (meant === 'previous') {
    const last = before ?? Math.max(...known.filter((patient) => patient < current));
    return known.includes(last)
      ? { kind: 'open', patient: last }
      : { kind: 'no-such-patient', why: 'There is no patient before this one.' };
  }
  return { kind: known.includes(meant) ? 'open' : 'begin', patient: meant };
}

export interface SaidTurn {
  readonly meant: PatientMeant;
  /** words said after it in the same breath, to be heard in the record that is turned to; null where none were */
  readonly rest: string | null;
}

/** The turn to another patient that an event asks for, or null. */
export function turnIn(event: RecordEvent): SaidTurn | null {
  if (event.kind !== 'command' || event.payload.patient === undefined) return null;
  return { meant: event.payload.patient, rest: event.payload.rest ?? null };
}

/**
 * The frames for the record of patient `here`. "Patient one" said in the first patient's own record turns to nobody else:
 * the words after it are heard in this record next, and the note that would keep them as another's is left out.
 */
export function staying(frames: readonly Frame[], here: number | undefined): readonly Frame[] {
  const rest = frames.flatMap((frame) =>
    frame.frame === 'command' && frame.patient === here ? (frame.rest ?? []) : [],
  )[0];
  if (here === undefined || rest === undefined) return frames;
  return frames.filter(
    (frame) =>
      !(
        frame.frame === 'statement' &&
        frame.statement.kind === 'note' &&
        frame.statement.text.endsWith(rest)
      ),
  );
}
