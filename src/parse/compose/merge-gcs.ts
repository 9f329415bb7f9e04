// "Eyes three. Verbal four, motor six. GCS thirteen." is one Glasgow Coma Scale, however many breaths it took.

import type { GcsPart } from '../../terms/index.ts';
import type { Frame, StatementFrame } from '../frame.ts';

interface Scores {
  readonly eye?: GcsPart;
  readonly verbal?: GcsPart;
  readonly motor?: GcsPart;
  readonly total?: number;
}

/** The frames of one utterance with the parts of a coma scale joined, where they add up; else as they were. */
export function mergeGcs(frames: readonly Frame[], text: string): readonly Frame[] {
  const scales = frames.filter(isGcs);
  const [first] = scales;
  if (first === undefined || scales.length < 2) return frames;
  const values = scales.map(valueOf);
  const keys = values.flatMap((value) => Object.keys(value).filter((key) => key !== 'total'));
  if (new Set(keys).size < keys.length) return frames;
  const joined: Scores = Object.assign({}, ...values);
  const parts = [joined.eye, joined.verbal, joined.motor];
  const sum = parts.every((part): part is number => typeof part === 'number')
    ? parts.reduce((total, part) => total + part, 0)
    : null;
  const totals = new Set(values.flatMap((value) => value.total ?? []));
  if (totals.size > 1 || (sum !== null && joined.total !== undefined && joined.total !== sum)) return frames;
  const total = parts.includes('NT') ? undefined : (joined.total ?? sum ?? undefined);
  const { total: _said, ...scores } = joined;
  const span = [
    Math.min(...scales.map((one) => one.span[0])),
    Math.max(...scales.map((one) => one.span[1])),
  ] as const;
  const one: StatementFrame = {
    ...first,
    span,
    heard: text.slice(...span),
    known: joined.total === undefined && total !== undefined ? { total: 'inferred' } : {},
    statement: {
      kind: 'vital',
      vital: 'gcs',
      value: { ...scores, ...(total === undefined ? {} : { total }) },
    },
  };
  return frames.flatMap((frame): Frame[] => (frame === first ? [one] : isGcs(frame) ? [] : [frame]));
}

const isGcs = (frame: Frame): frame is StatementFrame =>
  frame.frame === 'statement' && frame.statement.kind === 'vital' && frame.statement.vital === 'gcs';

const valueOf = (frame: StatementFrame): Scores =>
  frame.statement.kind === 'vital' && frame.statement.vital === 'gcs' ? frame.statement.value : {};
