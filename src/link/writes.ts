// Who writes a record next, as its own log says: the last handing on or taking over counts, and both histories stay.

import type { KeptStep } from '../record/index.ts';

export type Writes =
  | { readonly kind: 'here' }
  /** it was handed on; what is written here all the same is kept and told apart */
  | { readonly kind: 'elsewhere'; readonly name: string };

export function writesNext(steps: readonly KeptStep[]): Writes {
  const last = steps.findLast(({ step }) => step === 'passed' || step === 'taken');
  return last?.step === 'passed' ? { kind: 'elsewhere', name: last.name } : { kind: 'here' };
}
