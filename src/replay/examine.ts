// An examination made of talk: every utterance heard in turn, each in the record of the patient it was said of.

import {
  beginExam,
  type Exam,
  type HeardUtterance,
  hearUtterance,
  keepingRefusals,
  type ReadsTalk,
  turnIn,
  turnTo,
} from '../record/index.ts';
import type { Talk } from '../record/talk/index.ts';

/** Names the terminal in the log; entry identifiers begin with it. */
export const DEVICE = 'replay';

export interface PatientExam<Context> {
  /** the first patient is 1 */
  readonly patient: number;
  readonly exam: Exam<Context>;
}

interface Open<Context> {
  readonly exams: ReadonlyMap<number, Exam<Context>>;
  readonly current: number;
  readonly before?: number;
}

/** The examinations of every patient of the talk, the first patient's first. Most talks are of one. */
export function examineAll<Context>(
  reader: ReadsTalk<Context>,
  talk: Talk,
): readonly [PatientExam<Context>, ...PatientExam<Context>[]] {
  const { startedAt, zone } = talk;
  const reads = keepingRefusals(reader);
  const begun = (patient: number, at: number): Exam<Context> =>
    beginExam(reads, { device: patient === 1 ? DEVICE : `${DEVICE}-${patient}`, startedAt: at, zone });

  const hear = (open: Open<Context>, utterance: HeardUtterance): Open<Context> => {
    const exam = open.exams.get(open.current) ?? begun(open.current, utterance.heardAt);
    const heard = hearUtterance(exam, reads, utterance, open.current);
    const exams = new Map(open.exams).set(open.current, heard);
    const turn = heard.events
      .slice(exam.events.length)
      .flatMap((event) => turnIn(event) ?? [])
      .at(-1);
    if (turn === undefined) return { ...open, exams };
    const to = turnTo({ known: [...exams.keys()], ...open }, turn.meant);
    if (to.kind === 'no-such-patient') return { ...open, exams };
    const fresh = to.kind === 'begin' ? [[to.patient, begun(to.patient, utterance.heardAt)] as const] : [];
    const turned =
      to.patient === open.current
        ? { ...open, exams }
        : { exams: new Map([...exams, ...fresh]), current: to.patient, before: open.current };
    const { alternatives: _, ...said } = utterance;
    return turn.rest === null ? turned : hear(turned, { ...said, text: turn.rest });
  };

  const first = begun(1, startedAt);
  const { exams } = talk.utterances.reduce<Open<Context>>(hear, {
    exams: new Map([[1, first]]),
    current: 1,
  });
  const others = [...exams].filter(([patient]) => patient !== 1).sort(([a], [b]) => a - b);
  return [
    { patient: 1, exam: exams.get(1) ?? first },
    ...others.map(([patient, exam]) => ({ patient, exam })),
  ];
}

/** The examination of the talk's first patient after the whole talk. */
export const examine = <Context>(reader: ReadsTalk<Context>, talk: Talk): Exam<Context> =>
  examineAll(reader, talk)[0].exam;

/** When the last thing was said, in milliseconds since the epoch: the moment a report of the talk is made for. */
export const endOf = (talk: Talk): number =>
  talk.utterances.reduce((latest, { heardAt }) => Math.max(latest, heardAt), talk.startedAt);
