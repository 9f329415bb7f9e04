// Correcting what: present for absent, one finding for another.

import type { Finding, Statement } from '../../terms/index.ts';
import type { Entry } from '../entry.ts';
import { statementOf } from '../statement-of.ts';
import { type Outcome, SAME, SENSELESS } from './outcome.ts';

/** The entry's statement with the other answer. */
export function changePresent(entry: Entry, present: boolean): Outcome {
  if (entry.kind !== 'finding' && entry.kind !== 'csm' && entry.kind !== 'history') return SENSELESS;
  // A history line without the slot is a present one.
  if ((entry.present ?? true) === present && entry.known?.present === undefined) return SAME;
  return { kind: 'changed', statement: { ...statementOf(entry), present } as Statement, spoken: ['present'] };
}

/** The entry's statement with another finding at the same place. */
export function changeFinding(entry: Entry, finding: Finding): Outcome {
  if (entry.kind !== 'finding') return SENSELESS;
  if (entry.finding === finding) return SAME;
  return { kind: 'changed', statement: { ...statementOf(entry), finding } as Statement, spoken: ['finding'] };
}
