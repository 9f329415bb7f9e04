// A three-valued answer to one question, with its entries: what was not said stays unknown through every combination.

import type { Entry } from '../record/entry.ts';

export type Truth = 'yes' | 'no' | 'unknown';

export interface Answer {
  readonly truth: Truth;
  readonly evidence: readonly Entry[];
  /** for `unknown`: what would decide it */
  readonly missing: readonly string[];
  /** the reason in figures or words, one each */
  readonly because: readonly string[];
}

export const yes = (evidence: readonly Entry[], ...because: readonly string[]): Answer => ({
  truth: 'yes',
  evidence,
  missing: [],
  because,
});

export const no = (evidence: readonly Entry[], ...because: readonly string[]): Answer => ({
  truth: 'no',
  evidence,
  missing: [],
  because,
});

export const unknown = (
  missing: readonly string[],
  evidence: readonly Entry[] = [],
  ...because: readonly string[]
): Answer => ({ truth: 'unknown', evidence, missing, because });

const merge = (truth: Truth, answers: readonly Answer[]): Answer => ({
  truth,
  evidence: answers.flatMap((answer) => answer.evidence),
  missing: answers.flatMap((answer) => answer.missing),
  because: answers.flatMap((answer) => answer.because),
});

const of = (truth: Truth, answers: readonly Answer[]): readonly Answer[] =>
  answers.filter((answer) => answer.truth === truth);

/** Yes where every answer is yes, no where any is no, else unknown (Kleene's strong logic). */
export function all(answers: readonly Answer[]): Answer {
  const refuted = of('no', answers);
  if (refuted.length > 0) return merge('no', refuted);
  const open = of('unknown', answers);
  return open.length > 0 ? merge('unknown', answers) : merge('yes', answers);
}

/** Yes where any answer is yes, no where every one is no, else unknown. */
export function any(answers: readonly Answer[]): Answer {
  const met = of('yes', answers);
  if (met.length > 0) return merge('yes', met);
  const open = of('unknown', answers);
  return open.length > 0 ? merge('unknown', open) : merge('no', answers);
}
