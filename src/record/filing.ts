// How a record is filed: which patient of which incident, what it is called, and whether it is closed. Filing is logged too.

import { formatIso } from '../parse/times/index.ts';
import { append, type Exam } from './exam.ts';
import { BY_HAND } from './taps.ts';

export interface Filing {
  /** records of one incident share it: the identifier of the incident's first record; empty for that one itself */
  readonly incident: string;
  /** the first patient is 1 */
  readonly patient: number;
  /** what the patient is called until a name is known, such as "patient 3"; empty where nobody gave one */
  readonly label: string;
  /** a mark in words that needs no colour to be told apart, such as "by the stream"; empty where nobody gave one */
  readonly tag: string;
  readonly place: string;
  readonly closed: boolean;
}

export const UNFILED: Filing = { incident: '', patient: 1, label: '', tag: '', place: '', closed: false };

/** A change of a record's filing, with who made it. */
export interface Filed {
  readonly file: Partial<Filing>;
  readonly by: string;
}

/** The filing after one more change; what the change does not name stays. */
export const refile = (before: Filing, { file }: Filed): Filing => ({ ...before, ...file });

/** The examination filed anew; `time` in milliseconds since the epoch. Nothing is logged where nothing changes. */
export function fileExam<C>(exam: Exam<C>, file: Partial<Filing>, time: number, by = BY_HAND): Exam<C> {
  const names = Object.keys(file) as (keyof Filing)[];
  if (names.every((name) => exam.state.filing[name] === file[name])) return exam;
  return append(exam, formatIso(time, exam.zone), () => ({ kind: 'filed', payload: { file, by } }));
}
