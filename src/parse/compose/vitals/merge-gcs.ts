// "Eyes three. Verbal four, motor six. GCS thirteen." is one Glasgow Coma Scale, however many breaths it took.

import type { Frame, StatementFrame } from '../../frame.ts';
import { misfitOf, type Scores, totalOf } from './gcs.ts';

/** The frames of one utterance with the parts of a coma scale joined, where they add up; else as they were. */
export function mergeGcs(frames: readonly Frame[], text: string): readonly Frame[] {
  const scales = frames.filter(isGcs);
  const [first] = scales;
  if (first === undefined || scales.length < 2) return frames;
  const values = scales.map(scoresOf);
  const keys = values.flatMap((value) => Object.keys(value).filter((key) => key !== 'total'));
  const totals = new Set(values.flatMap((value) => value.total ?? []));
  // A part or a total that was said twice and differently belongs to two scales; a total that was only added up is not said.
  const said = scales.flatMap((one) => (one.known.total === undefined ? (scoresOf(one).total ?? []) : []));
  const question = new Set(keys).size < keys.length ? null : misfitIn(values, said);
  if (question !== null) return frames.map((frame) => (isGcs(frame) ? asking(frame, question) : frame));
  if (new Set(keys).size < keys.length || totals.size > 1) return frames;
  const joined: Scores = Object.assign({}, ...values);
  const total = totalOf(joined);
  if (total === 'misfit') return frames;
  const { total: sum, ...parts } = joined;
  const span = [
    Math.min(...scales.map((one) => one.span[0])),
    Math.max(...scales.map((one) => one.span[1])),
  ] as const;
  const one: StatementFrame = {
    ...first,
    span,
    heard: text.slice(...span),
    known: sum === undefined && total !== null ? { total: 'inferred' } : {},
    statement: { kind: 'vital', vital: 'gcs', value: { ...parts, ...(total === null ? {} : { total }) } },
  };
  return frames.flatMap((frame): Frame[] => (frame === first ? [one] : isGcs(frame) ? [] : [frame]));
}

const isGcs = (frame: Frame): frame is StatementFrame =>
  frame.frame === 'statement' && frame.statement.kind === 'vital' && frame.statement.vital === 'gcs';

const scoresOf = (frame: StatementFrame): Scores =>
  frame.statement.kind === 'vital' && frame.statement.vital === 'gcs' ? frame.statement.value : {};

/** The question of parts and a sum that were said apart and do not fit; null where they do, or where no sum was said. */
function misfitIn(values: readonly Scores[], said: readonly number[]): string | null {
  const [total, other] = [...new Set(said)];
  if (total === undefined || other !== undefined) return null;
  return misfitOf({ ...Object.assign({}, ...values), total });
}

const asking = (frame: StatementFrame, question: string): StatementFrame => ({
  ...frame,
  doubt: [...frame.doubt, question],
});
